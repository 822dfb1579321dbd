// SPDX-License-Identifier: GPL-3.0-or-later
// What a plan for the boxes is put into: tables and a paper.
#include "app/desk/commands.hpp"
#include "app/desk/message_bar.hpp"
#include "app/desk/places/desk_papers.hpp"
#include "app/desk/places/packing_panel.hpp"
#include "app/session/pack_lists.hpp"
#include "app/session/wording.hpp"

#include <QDir>
#include <QFileDialog>

namespace quarterstep
{

QString PackingPanel::askWhereTo(const QString& words, const QString& name)
{
    if (camp_ == nullptr || !plan_ || plan_->answer.impossible)
        return {};
    return QFileDialog::getSaveFileName(
        this, words, QDir(QString::fromStdString(camp_->folder())).filePath(name), tr("Tables (*.csv)"));
}

void PackingPanel::askOrder()
{
    if (const auto path = askWhereTo(tr("Order"), QStringLiteral("order.csv")); !path.isEmpty())
        saveOrder(path);
}

void PackingPanel::askBoxes()
{
    if (const auto path = askWhereTo(tr("Packing list"), QStringLiteral("packing-list.csv")); !path.isEmpty())
        saveBoxes(path);
}

void PackingPanel::saveOrder(const QString& path)
{
    runCommand(messages_, [this, &path] {
        replaceFile(path.toStdString(), orderCsv(plan_->answer), true);
        messages_.showDone(tr("The order is %1.").arg(ltr(QDir::toNativeSeparators(path))));
    });
}

void PackingPanel::saveBoxes(const QString& path)
{
    runCommand(messages_, [this, &path] {
        replaceFile(path.toStdString(), boxesCsv(plan_->answer), true);
        messages_.showDone(tr("The packing list is %1.").arg(ltr(QDir::toNativeSeparators(path))));
    });
}

void PackingPanel::print()
{
    if (camp_ == nullptr || !plan_ || plan_->answer.impossible)
        return;
    runCommand(messages_, [this] {
        papers_->draw(deskPackingList(*camp_, *plan_), *camp_, "boxes", printer_.toStdString());
    });
}

} // namespace quarterstep
