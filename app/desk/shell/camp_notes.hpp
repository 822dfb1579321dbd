// SPDX-License-Identifier: GPL-3.0-or-later
// What was found when the camp was opened and somebody should know before work begins: a ledger that moved,
// entries that are not as they were written, lines that came or went, counts edited by hand. It stays until
// it is put away, and then does not come back while this camp is open; no work waits for it.
#pragma once

#include "core/finding.hpp"

#include <QFrame>
#include <QStringList>

class QLabel;
class QPushButton;

namespace quarterstep
{

class Camp;

class CampNotes final : public QFrame
{
    Q_OBJECT

  public:
    explicit CampNotes(QWidget* parent = nullptr);

    /// Errors and cautions of this camp that were not put away; null: none.
    void take(const Camp* camp);
    /// One that the camp does not know: found after it was opened.
    void add(const Finding& finding);

  Q_SIGNALS:
    /// Said of a moved ledger: its folder lies here for good, or this is a second station.
    void movedHere();
    void secondStation();

  private:
    void tell();
    void putAway();

    QString folder_;     ///< of the camp these notes are of
    QStringList ofCamp_; ///< sentences as people read them
    QStringList later_;
    QStringList away_;
    QLabel* words_;
    QPushButton* movedHere_;
    QPushButton* secondStation_;
};

} // namespace quarterstep
