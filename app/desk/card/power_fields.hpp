// SPDX-License-Identifier: GPL-3.0-or-later
// One eye in three fields: sphere, cylinder, axis. The text of the eye stays what counts: these fields show
// it and write it.
#pragma once

#include "app/desk/card/key_guard.hpp"
#include "core/optics/units.hpp"

#include <QWidget>

#include <array>

namespace quarterstep
{

class PowerFields final : public QWidget
{
    Q_OBJECT

  public:
    explicit PowerFields(Eye eye, QWidget* parent = nullptr);

    /// Shows the power; false (and nothing changed) when the text is more than sphere, cylinder and axis.
    bool show(const QString& text);
    [[nodiscard]] StepField* first() const { return fields_[0]; }
    [[nodiscard]] StepField* last() const { return fields_[2]; }

  Q_SIGNALS:
    void typed(const QString& text);
    void keyRefused(const QString& words);
    void suggestWanted();
    void left();

  protected:
    void changeEvent(QEvent* event) override;

  private:
    void giveRoom();
    [[nodiscard]] QString written() const;

    Eye eye_;
    std::array<StepField*, 3> fields_{};
};

} // namespace quarterstep
