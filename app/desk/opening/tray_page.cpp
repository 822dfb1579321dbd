// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/opening/tray_page.hpp"

#include "app/desk/commands.hpp"
#include "app/desk/message_bar.hpp"
#include "app/desk/models/lines_model.hpp"
#include "app/desk/places/parts.hpp"
#include "app/desk/shell/folding_row.hpp"
#include "app/desk/shell/wrap_layout.hpp"
#include "app/session/wording.hpp"

#include <QDir>
#include <QFileDialog>
#include <QFrame>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPainter>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QStandardPaths>
#include <QTableView>
#include <QTimer>

namespace quarterstep
{

namespace
{
constexpr int previewAfterMs = 150;
constexpr int mostFindingsTold = 5;

/// Examples to begin from; the words of the description are not translated, as those of any file.
constexpr auto readersExample = "near +1.00 to +3.50 by 0.50: 10 centres 62";
constexpr auto distanceExample = "distance -0.50 to -3.00 by 0.50: 6 centres 62";
constexpr auto lensesExample = "lens -4.00 to +4.00 by 0.50: 4 round 44\nframe 44-18: 20";

/// The example begins where what is typed begins, at the left; that of Qt begins where the window does.
class TraysEdit final : public QPlainTextEdit
{
  public:
    using QPlainTextEdit::QPlainTextEdit;

  protected:
    void paintEvent(QPaintEvent* event) override
    {
        QPlainTextEdit::paintEvent(event);
        if (!document()->isEmpty())
            return;
        const int margin = static_cast<int>(document()->documentMargin());
        QPainter painter(viewport());
        painter.setLayoutDirection(Qt::LeftToRight);
        painter.setPen(palette().color(QPalette::PlaceholderText));
        painter.drawText(viewport()->rect().marginsRemoved({margin, margin, margin, margin}),
                         static_cast<int>(Qt::AlignLeft | Qt::AlignTop) | Qt::TextWordWrap,
                         QLatin1String(readersExample));
    }
};
} // namespace

TrayPage::TrayPage(MessageBar& messages, QWidget* parent)
    : QWidget(parent), messages_(messages), lines_(new LinesModel(this)), soon_(new QTimer(this))
{
    setObjectName(QStringLiteral("trayPage"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    auto* row = new FoldingRow(this);
    row->add(buildTyping());
    row->add(buildPreview());
    column->addWidget(row);
    soon_->setSingleShot(true);
    soon_->setInterval(previewAfterMs);
    connect(soon_, &QTimer::timeout, this, &TrayPage::preview);
    connect(name_, &QLineEdit::textChanged, soon_, qOverload<>(&QTimer::start));
    connect(trays_, &QPlainTextEdit::textChanged, soon_, qOverload<>(&QTimer::start));
    connect(folder_, &QLineEdit::textChanged, soon_, qOverload<>(&QTimer::start));
    setFocusProxy(name_);
}

QLineEdit* TrayPage::field(QVBoxLayout& column, const char* name, const QString& label,
                           const QString& tooltip)
{
    auto* words = hinted(label, QLatin1String(name) + QStringLiteral("Label"));
    auto* edit = new QLineEdit(this);
    edit->setObjectName(QLatin1String(name));
    edit->setAccessibleName(label);
    edit->setToolTip(tooltip);
    words->setBuddy(edit);
    column.addWidget(words);
    column.addWidget(edit);
    return edit;
}

QWidget* TrayPage::buildTyping()
{
    QVBoxLayout* column = nullptr;
    auto* box = framed(QStringLiteral("trayFrame"), tr("Start my own camp"), column);
    name_ = field(*column, "campNameEdit", tr("Name of the camp or box"),
                  tr("Stands on every paper and at the top of the window"));
    auto* label = hinted(tr("The trays, one a line: powers, a colon, how many in each bin"),
                         QStringLiteral("traysLabel"));
    trays_ = new TraysEdit(box);
    trays_->setObjectName(QStringLiteral("traysEdit"));
    trays_->setAccessibleName(tr("The trays"));
    trays_->setToolTip(tr("Powers in dioptres with their sign, from … to … by a step; then a colon and the "
                          "count. After the count: centres in mm, bin, round lens size in mm"));
    trays_->setTabChangesFocus(true);
    trays_->setLayoutDirection(Qt::LeftToRight);
    trays_->setAccessibleDescription(QLatin1String(readersExample));
    label->setBuddy(trays_);
    column->addWidget(label);
    trays_->setMinimumHeight(trays_->fontMetrics().lineSpacing() * 6);
    column->addWidget(trays_, 1);
    buildExamples(*column);
    folder_ = field(*column, "newFolderEdit", tr("Folder it goes into"),
                    tr("Made when it is missing; a stock.yaml that is there is never overwritten"));
    folder_->setLayoutDirection(Qt::LeftToRight);
    auto* choose = new QPushButton(tr("Choose the folder…"), box);
    choose->setObjectName(QStringLiteral("chooseNewFolderButton"));
    choose->setToolTip(tr("Looks for a folder on this laptop"));
    connect(choose, &QPushButton::clicked, this, &TrayPage::askFolder);
    column->addWidget(choose, 0, Qt::AlignLeading);
    return box;
}

void TrayPage::buildExamples(QVBoxLayout& column)
{
    auto* box = new QWidget(this);
    auto* row = new WrapLayout(box);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(6);
    const std::tuple<const char*, QString, const char*> examples[] = {
        {"addReadersButton", tr("Add readers"), readersExample},
        {"addDistanceButton", tr("Add distance pairs"), distanceExample},
        {"addLensesButton", tr("Add lenses and frames"), lensesExample}};
    for (const auto& [name, words, lines] : examples) {
        auto* add = new QPushButton(words, box);
        add->setObjectName(QLatin1String(name));
        add->setToolTip(tr("Writes an example below the trays, to be changed"));
        connect(add, &QPushButton::clicked, this, [this, text = QLatin1String(lines)] { addExample(text); });
        row->addWidget(add);
    }
    column.addWidget(box);
}

QWidget* TrayPage::buildPreview()
{
    QVBoxLayout* column = nullptr;
    auto* box = framed(QStringLiteral("trayPreviewFrame"), tr("The stock it makes"), column);
    counted_ = hinted({}, QStringLiteral("trayCounted"));
    found_ = new QLabel(box);
    found_->setObjectName(QStringLiteral("trayFindings"));
    found_->setProperty("role", QStringLiteral("complaint"));
    found_->setWordWrap(true);
    auto* view = tableOf(lines_, QStringLiteral("trayPreview"), tr("The stock it makes"));
    view->setToolTip(tr("Bin, line, power in dioptres and count of every line"));
    for (const auto hidden : {LinesModel::availableColumn, LinesModel::levelColumn, LinesModel::asideColumn,
                              LinesModel::campsColumn})
        view->setColumnHidden(hidden, true);
    giveWidths(*view, {5, 17, 16, 8, 11, 8}); // bin, line, power, two that are hidden, on hand
    shareWidth(*view, {{LinesModel::lineColumn, 1}, {LinesModel::powerColumn, 1}});
    column->addWidget(counted_);
    column->addWidget(found_);
    column->addWidget(view, 1);
    auto* row = new QHBoxLayout;
    auto* back = new QPushButton(tr("Back"), box);
    back->setObjectName(QStringLiteral("trayBackButton"));
    back->setToolTip(tr("Leaves this page; what is typed stays while the window is open"));
    connect(back, &QPushButton::clicked, this, &TrayPage::backWanted);
    make_ = new QPushButton(tr("Make this camp"), box);
    make_->setObjectName(QStringLiteral("makeCampButton"));
    make_->setProperty("primary", true);
    make_->setToolTip(tr("Writes stock.yaml into the folder and opens it"));
    connect(make_, &QPushButton::clicked, this, &TrayPage::make);
    row->addWidget(back);
    row->addStretch(1);
    row->addWidget(make_);
    column->addLayout(row);
    return box;
}

void TrayPage::begin(const QString& folder)
{
    if (!folder.isEmpty() || folder_->text().isEmpty())
        folder_->setText(QDir::toNativeSeparators(
            folder.isEmpty() ? QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation) +
                                   QLatin1Char('/') + tr("my camp")
                             : folder));
    preview();
}

void TrayPage::addExample(const QString& lines)
{
    auto text = trays_->toPlainText();
    if (!text.isEmpty() && !text.endsWith(QLatin1Char('\n')))
        text += QLatin1Char('\n');
    trays_->setPlainText(text + lines + QLatin1Char('\n'));
    trays_->moveCursor(QTextCursor::End);
    preview();
}

void TrayPage::askFolder()
{
    const auto folder = QFileDialog::getExistingDirectory(this, tr("Folder for the new camp"));
    if (!folder.isEmpty())
        folder_->setText(QDir::toNativeSeparators(folder));
}

void TrayPage::preview()
{
    soon_->stop();
    const bool begun = !trays_->toPlainText().trimmed().isEmpty();
    stock_ = stockOfTray(name_->text().toStdString(), trays_->toPlainText().toStdString());
    QStringList told;
    for (const auto& finding : stock_.findings)
        if (begun && told.size() < mostFindingsTold)
            told << tr("Line %1, character %2: %3")
                        .arg(QString::number(finding.position.line), QString::number(finding.position.column),
                             say(finding.sentence));
    if (begun && name_->text().trimmed().isEmpty())
        told = QStringList{tr("The camp has no name yet.")};
    found_->setText(told.join(QLatin1Char('\n')));
    found_->setVisible(!told.isEmpty());
    int pieces = 0;
    for (const auto& line : stock_.value.lines)
        pieces += line.onHand;
    counted_->setText(
        begun ? tr("%1 lines, %2 pieces").arg(stock_.value.lines.size()).arg(pieces)
              : tr("Nothing is typed yet. The buttons under the trays write examples to change."));
    lines_->show(stock_.value.lines, {});
    make_->setEnabled(stock_.usable() && !folder_->text().trimmed().isEmpty());
}

void TrayPage::make()
{
    preview();
    const auto folder = QDir::fromNativeSeparators(folder_->text().trimmed());
    if (stock_.usable() &&
        runCommand(messages_, [this, &folder] { writeNewStock(folder.toStdString(), stock_.value.bytes); })) {
        trays_->clear();
        name_->clear();
        Q_EMIT campMade(folder);
    }
}

} // namespace quarterstep
