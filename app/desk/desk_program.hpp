// SPDX-License-Identifier: GPL-3.0-or-later
// The running program: language, look, and the one window. A language chosen in the settings makes the window
// anew with the same camp; what was typed comes back by its draft.
#pragma once

#include "app/desk/desk_options.hpp"

#include <QObject>

#include <memory>

class QApplication;
class QTranslator;

namespace quarterstep
{

class DeskWindow;

class DeskProgram final : public QObject
{
    Q_OBJECT

  public:
    DeskProgram(QApplication& application, const DeskOptions& options);
    ~DeskProgram() override;

    [[nodiscard]] DeskWindow& window() { return *window_; }
    /// Shows the window; the camp is read while it is alive. Without a folder the last camp, or the first
    /// page.
    void begin();

  private:
    void speak(const QString& language);
    void makeWindow();
    void tellNamed();
    void changeLanguage(const QString& language);

    QApplication& application_;
    DeskOptions options_;
    std::unique_ptr<QTranslator> ours_;
    std::unique_ptr<QTranslator> base_;
    std::unique_ptr<DeskWindow> window_;
};

/// The person, the place and the line named on the command line; what cannot be found, in words.
[[nodiscard]] QString showNamed(DeskWindow& window, const DeskOptions& options);

} // namespace quarterstep
