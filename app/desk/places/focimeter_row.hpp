// SPDX-License-Identifier: GPL-3.0-or-later
// What the focimeter reads of an unequal pair, each eye, judged against the pair by the usual tolerance set.
#pragma once

#include "app/session/pair_reading.hpp"

#include <QWidget>

class QLabel;

namespace quarterstep
{

class GuardedEdit;

class FocimeterRow final : public QWidget
{
    Q_OBJECT

  public:
    explicit FocimeterRow(QWidget* parent = nullptr);
    ~FocimeterRow() override;

    /// The pair to be read. Another one empties the fields.
    void setSupply(const Supply& supply);
    void clear();
    /// What was typed and can be read.
    [[nodiscard]] PairReading reading() const;

  Q_SIGNALS:
    /// Something was typed: whether both lenses were read and agree with the pair.
    void judged(bool agrees);

  private:
    void judge();

    PerEye<GuardedEdit*> read_{nullptr, nullptr};
    QLabel* said_;
    Supply supply_;
};

} // namespace quarterstep
