// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/bringing/exchange_page.hpp"

#include "app/desk/bringing/bring_in_panel.hpp"
#include "app/desk/bringing/send_out_panel.hpp"
#include "app/desk/lasting/long_work.hpp"
#include "app/desk/places/dispense_place.hpp"
#include "app/desk/places/pages_frame.hpp"

#include <QEventLoop>
#include <QTimer>
#include <QVBoxLayout>

namespace quarterstep
{

ExchangePage::ExchangePage(MessageBar& messages, LongWork& work, DispensePlace& dispense, QWidget* parent)
    : QWidget(parent), work_(work), dispense_(dispense),
      parts_(new PagesFrame(QStringLiteral("exchangeFrame"), QStringLiteral("exchangeTabs"),
                            tr("What comes in, or what goes out"), this)),
      bringIn_(new BringInPanel(messages, work)), sendOut_(new SendOutPanel(messages, work))
{
    setObjectName(QStringLiteral("exchangePage"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(parts_);
    parts_->addPage(tr("Bring in"), bringIn_);
    parts_->addPage(tr("Send out"), sendOut_);
    connect(parts_, &PagesFrame::pageShown, sendOut_, &SendOutPanel::refresh);
    connect(parts_, &PagesFrame::pageShown, this, &ExchangePage::giveRoomTo);
    giveRoomTo(bringInPart);
    connect(bringIn_, &BringInPanel::backWanted, this, &ExchangePage::backWanted);
    connect(sendOut_, &SendOutPanel::backWanted, this, &ExchangePage::backWanted);
    connect(bringIn_, &BringInPanel::broughtIn, this,
            [this](const std::shared_ptr<const std::vector<TableRow>>& rows) {
                dispense_.addPeople(rows);
                Q_EMIT peopleCame();
            });
}

void ExchangePage::take(const Camp* camp)
{
    camp_ = camp;
    bringIn_->begin(camp ? QString::fromStdString(camp->folder()) : QString(),
                    [this] { return dispense_.waitingCodes(); });
    sendOut_->begin(camp, {[this] { return dispense_.peopleCount(); }, [this] { return dispense_.people(); },
                           [this] { return dispense_.personOnCard(); }});
    if (camp)
        readKept(broughtInTables(camp->folder()));
}

void ExchangePage::showPart(Part part)
{
    parts_->setPage(part);
    sendOut_->refresh();
}

/// The part that is not shown asks for no room, so that the other one is not scrolled for its sake.
void ExchangePage::giveRoomTo(int part)
{
    const auto ask = [](QWidget& panel, bool shown) {
        auto policy = panel.sizePolicy();
        const auto asked = shown ? QSizePolicy::Preferred : QSizePolicy::Ignored;
        policy.setHorizontalPolicy(asked);
        policy.setVerticalPolicy(asked);
        panel.setSizePolicy(policy);
    };
    ask(*bringIn_, part == bringInPart);
    ask(*sendOut_, part == sendOutPart);
}

/// Like people.csv, but on a thread of its own: what was brought in can be long.
void ExchangePage::readKept(const std::vector<std::string>& paths)
{
    if (paths.empty())
        return;
    const auto rows = std::make_shared<std::vector<TableRow>>();
    const auto work = [rows, paths](const Job& job) {
        for (const auto& path : paths) {
            if (job.stopped())
                return;
            auto table = readPrescriptionTable(path, todayIso());
            std::move(table.value.rows.begin(), table.value.rows.end(), std::back_inserter(*rows));
        }
    };
    const auto ended = [this, rows, folder = camp_->folder()](const std::exception_ptr& problem,
                                                              bool stopped) {
        if (camp_ && camp_->folder() == folder && !problem && !stopped)
            dispense_.addPeople(rows);
    };
    work_.start(tr("Reading what was brought in before…"), work, ended);
}

void ExchangePage::waitForReading()
{
    QEventLoop loop;
    QTimer look;
    connect(&look, &QTimer::timeout, &loop, [this, &loop] {
        if (!bringIn_->isBusy() && !work_.running())
            loop.quit();
    });
    constexpr int lookMs = 20;
    look.start(lookMs);
    loop.exec();
}

} // namespace quarterstep
