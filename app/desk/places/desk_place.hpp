// SPDX-License-Identifier: GPL-3.0-or-later
// What the window does with each of its places.
#pragma once

#include <QWidget>

namespace quarterstep
{

class Camp;
class LongWork;
class MessageBar;
class PinGuard;

/// What every place is given: where it says something, where it asks for a PIN, and where long work runs.
struct DeskParts {
    MessageBar& messages;
    PinGuard& pins;
    LongWork& work;
};

class DeskPlace : public QWidget
{
    Q_OBJECT

  public:
    using QWidget::QWidget;

    /// Works with this camp from now on; null: with none. It must live as long as it is set. Throws Error.
    virtual void take(Camp* camp) = 0;
    /// Something was entered elsewhere: the counts and the ledger are others now.
    virtual void campMoved() = 0;
    /// The look or the size of the letters is another one.
    virtual void restyle() = 0;

  Q_SIGNALS:
    /// Something was entered here.
    void campChanged();
};

} // namespace quarterstep
