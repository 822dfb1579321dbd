// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/desk_program.hpp"

#include "app/desk/bringing/bring_in_panel.hpp"
#include "app/desk/bringing/exchange_page.hpp"
#include "app/desk/desk_window.hpp"
#include "app/desk/message_bar.hpp"
#include "app/desk/places/audit_place.hpp"
#include "app/desk/places/packing_panel.hpp"
#include "app/desk/places/stock_place.hpp"
#include "inventory/text/rules_file.hpp"

#include <QApplication>
#include <QEvent>
#include <QFile>
#include <QLibraryInfo>
#include <QLocale>
#include <QTimer>
#include <QTranslator>

#include <utility>

namespace quarterstep
{

namespace
{
/// The camp named on the command line, or the one open last; empty: none.
QString firstFolder(const DeskOptions& options)
{
    if (!options.folder.isEmpty() || !options.place.isEmpty())
        return options.folder;
    const auto last = readPreferences().camps.value(0);
    return QFile::exists(last + QStringLiteral("/stock.yaml")) ? last : QString();
}

/// Memory of this thread while it lives. The heap of a thread grows by pages, each with a call to the system
/// that keeps the thread of the window from getting memory meanwhile; blocks that are let go below one that
/// is kept stay with the heap.
class HeapAhead
{
  public:
    HeapAhead()
    {
        constexpr std::size_t blockBytes = 100'000; // larger ones would not come from the heap
        constexpr std::size_t blocks = 160;         // about what 5,000 lines take while they are read
        std::vector<std::unique_ptr<char[]>> below(blocks);
        for (auto& block : below)
            block.reset(new char[blockBytes]);
        kept_ = std::move(below.back());
    }

  private:
    std::unique_ptr<char[]> kept_;
};
} // namespace

std::future<CampFiles> readAhead(const DeskOptions& options)
{
    const auto folder = firstFolder(options);
    return folder.isEmpty() ? std::future<CampFiles>()
                            : std::async(std::launch::async, [path = folder.toStdString()] {
                                  const HeapAhead ahead;
                                  return readCampFilesAndLedger(path);
                              });
}

QString showNamed(DeskWindow& window, const DeskOptions& options)
{
    if (!options.person.isEmpty() && !window.choosePerson(options.person))
        return QCoreApplication::translate("DeskOptions", "no readable person %1 in people.csv")
            .arg(options.person);
    if (options.place.startsWith(QLatin1String("stock")) || !options.line.isEmpty())
        window.showPlace(DeskWindow::Place::stock);
    for (const auto& [place, view] :
         {std::pair{"stock-ladder", StockPlace::asLadder}, std::pair{"stock-box", StockPlace::asBox},
          std::pair{"stock-packing", StockPlace::packing},
          std::pair{"stock-transfers", StockPlace::transfers}})
        if (options.place == QLatin1String(place))
            window.stock().showView(view);
    if (options.place == QLatin1String("stock-packing") && !options.screenshot.isEmpty()) {
        window.stock().packingPanel().makePlan();
        window.stock().packingPanel().waitForPlan();
    }
    if (options.place.startsWith(QLatin1String("audit"))) {
        window.showPlace(DeskWindow::Place::audit);
        window.audit().showView(options.place == QLatin1String("audit-charts")  ? 1
                                : options.place == QLatin1String("audit-bench") ? 2
                                                                                : 0);
        window.audit().choosePerson(options.person);
        if (!options.screenshot.isEmpty())
            window.audit().waitForAudit();
    }
    if (options.place == QLatin1String("opening"))
        window.showOpening();
    if (options.place == QLatin1String("trays"))
        window.showTrays({});
    if (options.place == QLatin1String("bring-in") || options.place == QLatin1String("send-out")) {
        window.showExchange();
        window.exchange().showPart(options.place == QLatin1String("send-out") ? ExchangePage::sendOutPart
                                                                              : ExchangePage::bringInPart);
    }
    if (!options.bring.isEmpty()) {
        window.exchange().bringIn().openFiles({options.bring});
        if (!options.screenshot.isEmpty())
            window.exchange().waitForReading();
    }
    if (options.place == QLatin1String("settings"))
        window.showSettings();
    if (options.place == QLatin1String("help"))
        window.showHelp();
    if (options.place == QLatin1String("keys"))
        window.showKeys();
    if (!options.line.isEmpty() && !window.stock().chooseLine(options.line.toStdString()))
        return QCoreApplication::translate("DeskOptions", "no line %1 in this stock").arg(options.line);
    return {};
}

DeskProgram::DeskProgram(QApplication& application, const DeskOptions& options, std::future<CampFiles> early)
    : application_(application), options_(options), early_(std::move(early))
{
    // A picture shows what its flags say, whoever is at the laptop.
    const auto person = options.screenshot.isEmpty() ? readPreferences() : Preferences{};
    speak(options.language.isEmpty() ? person.language : options.language);
    applyPlainTheme(application, options.theme.value_or(person.theme),
                    options.textScale.value_or(person.textScale));
    makeWindow(DeskWindow::Parts::later);
    if (!options.screenshot.isEmpty())
        window().forgetCamps();
    window_->resize(options.size);
}

DeskProgram::~DeskProgram() = default;

void DeskProgram::speak(const QString& language)
{
    const QLocale locale = language.isEmpty() ? QLocale::system() : QLocale(language);
    ours_ = std::make_unique<QTranslator>();
    if (ours_->load(locale, QStringLiteral("quarterstep"), QStringLiteral("_"), QStringLiteral(":/i18n")))
        QApplication::installTranslator(ours_.get());
    application_.setProperty("quarterstepLanguage", locale.name().left(2)); // that of papers, too
    base_ = std::make_unique<QTranslator>();
    if (base_->load(locale, QStringLiteral("qtbase"), QStringLiteral("_"),
                    QLibraryInfo::path(QLibraryInfo::TranslationsPath)))
        QApplication::installTranslator(base_.get());
    const bool mirrored =
        options_.rightToLeft || (!language.isEmpty() && locale.textDirection() == Qt::RightToLeft);
    QApplication::setLayoutDirection(mirrored ? Qt::RightToLeft : Qt::LeftToRight);
}

void DeskProgram::makeWindow(DeskWindow::Parts parts)
{
    window_ = std::make_unique<DeskWindow>(parts);
    connect(window_.get(), &DeskWindow::languageChosen, this, &DeskProgram::changeLanguage,
            Qt::QueuedConnection); // not from inside the window that goes
}

void DeskProgram::changeLanguage(const QString& language)
{
    const auto folder = window_->campFolder();
    const auto place = window_->geometry();
    window_.reset();
    speak(language);
    makeWindow(DeskWindow::Parts::now);
    window_->setGeometry(place);
    window_->show();
    if (!folder.isEmpty())
        window_->openCamp(folder);
    window_->showSettings();
}

void DeskProgram::tellNamed()
{
    if (const auto missing = showNamed(*window_, options_); !missing.isEmpty())
        window_->messages().showError(missing, {});
}

DeskWindow& DeskProgram::window()
{
    buildParts(false);
    return *window_;
}

/// The sheet of the look comes last: with it, every part would be styled anew each time it is put into
/// another, for nothing.
void DeskProgram::buildParts(bool campComes)
{
    if (window_->built())
        return;
    window_->build(campComes);
    applySheet(application_);
}

/// The window is painted before its parts are made, and while the camp is read.
void DeskProgram::begin()
{
    constexpr int paintedByMs = 500; // where a window is not painted at all: minimised
    window_->installEventFilter(this);
    window_->show();
    QTimer::singleShot(paintedByMs, this, &DeskProgram::openFirst);
}

bool DeskProgram::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::Paint && !begun_)
        QTimer::singleShot(0, this, &DeskProgram::openFirst);
    return QObject::eventFilter(watched, event);
}

void DeskProgram::openFirst()
{
    if (std::exchange(begun_, true))
        return;
    window_->removeEventFilter(this);
    const auto folder = firstFolder(options_);
    buildParts(!folder.isEmpty());
    if (folder.isEmpty()) {
        tellNamed();
        return;
    }
    connect(window_.get(), &DeskWindow::campOpened, this, [this](bool opened) {
        if (opened)
            tellNamed();
    });
    window_->openCampLater(folder, std::move(early_));
    QCoreApplication::sendPostedEvents(nullptr, QEvent::LayoutRequest); // painted once, as it stands
    (void)defaultRules(); // read here while the stock is read there, which asks for them at its end
}

} // namespace quarterstep
