// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/shell/camp_notes.hpp"

#include "app/session/camp.hpp"
#include "app/session/wording.hpp"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

namespace quarterstep
{

CampNotes::CampNotes(QWidget* parent)
    : QFrame(parent), words_(new QLabel(this)),
      movedHere_(new QPushButton(tr("It lies here for good"), this)),
      secondStation_(new QPushButton(tr("It is a second station"), this))
{
    setObjectName(QStringLiteral("campNotes"));
    auto* heading = new QLabel(tr("Know first"), this);
    heading->setProperty("role", QStringLiteral("heading"));
    words_->setObjectName(QStringLiteral("campNotesText"));
    words_->setWordWrap(true);
    movedHere_->setObjectName(QStringLiteral("movedHereButton"));
    movedHere_->setToolTip(
        tr("From now on this folder is written to; the copy it came from is used no more"));
    secondStation_->setObjectName(QStringLiteral("secondStationButton"));
    secondStation_->setToolTip(
        tr("Both folders are used; what is handed over here is brought together with the other later"));
    auto* close = new QPushButton(tr("Put away"), this);
    close->setObjectName(QStringLiteral("putNotesAwayButton"));
    close->setToolTip(tr("These notes do not come back while this camp is open"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(12, 6, 8, 6);
    row->addWidget(heading, 0, Qt::AlignTop);
    row->addWidget(words_, 1);
    for (auto* button : {movedHere_, secondStation_, close})
        row->addWidget(button, 0, Qt::AlignTop);
    connect(movedHere_, &QPushButton::clicked, this, &CampNotes::movedHere);
    connect(secondStation_, &QPushButton::clicked, this, &CampNotes::secondStation);
    connect(close, &QPushButton::clicked, this, &CampNotes::putAway);
    hide();
}

void CampNotes::take(const Camp* camp)
{
    const auto folder = camp ? QString::fromStdString(camp->folder()) : QString();
    if (folder != folder_) {
        later_.clear();
        away_.clear();
    }
    folder_ = folder;
    ofCamp_.clear();
    bool moved = false;
    if (camp) {
        for (const auto& finding : camp->findings()) {
            if (finding.severity != Severity::note)
                ofCamp_ << say(finding.sentence);
            moved = moved || finding.code == "ledger-moved";
        }
        if (const int lines = static_cast<int>(camp->edited().size()); lines > 0)
            ofCamp_ << tr(
                "Counts in stock.yaml were edited by hand in %n line(s). The ledger's counts are used "
                "until the edits are accepted or discarded in Stock.",
                nullptr, lines);
    }
    movedHere_->setVisible(moved);
    secondStation_->setVisible(moved);
    tell();
}

void CampNotes::add(const Finding& finding)
{
    later_ << say(finding.sentence);
    tell();
}

void CampNotes::tell()
{
    QStringList left;
    for (const auto& sentence : ofCamp_ + later_)
        if (!away_.contains(sentence) && !left.contains(sentence))
            left << sentence;
    words_->setText(left.join(QLatin1Char('\n')));
    setVisible(!left.isEmpty());
}

void CampNotes::putAway()
{
    away_ += ofCamp_ + later_;
    tell();
}

} // namespace quarterstep
