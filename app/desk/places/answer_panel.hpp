// SPDX-License-Identifier: GPL-3.0-or-later
// The answer in words, above the pairs: verdict, the sentence behind it, referral, cautions and what is
// missing.
#pragma once

#include "core/fitting/recommendation.hpp"

#include <QFrame>

class QLabel;
class QTabBar;

namespace quarterstep
{

class AnswerPanel final : public QFrame
{
    Q_OBJECT

  public:
    explicit AnswerPanel(QWidget* parent = nullptr);

    /// One tab a purpose; the first is shown.
    void show(const std::vector<Recommendation>& recommendations);
    void clear(const QString& hint);
    /// Shows the answer of that number.
    void choose(int index);
    [[nodiscard]] QString text() const;

  Q_SIGNALS:
    void answerChosen(int index);

  private:
    void showOne(int index);

    QTabBar* purposes_;
    QLabel* verdict_;
    QLabel* reason_;
    QLabel* notes_;
    std::vector<Recommendation> recommendations_;
};

} // namespace quarterstep
