// SPDX-License-Identifier: GPL-3.0-or-later
// The running program: language, look, and the one window. A language chosen in the settings makes the window
// anew with the same camp; what was typed comes back by its draft.
#pragma once

#include "app/desk/desk_options.hpp"
#include "app/desk/desk_window.hpp"

#include <QObject>

#include <future>
#include <memory>

class QApplication;
class QTranslator;

namespace quarterstep
{

class DeskProgram final : public QObject
{
    Q_OBJECT

  public:
    /// @param early  the first camp, being read since before there was an application (readAhead)
    DeskProgram(QApplication& application, const DeskOptions& options, std::future<CampFiles> early = {});
    ~DeskProgram() override;

    /// The window with its parts.
    [[nodiscard]] DeskWindow& window();
    /// The same as it is now, perhaps without its parts yet.
    [[nodiscard]] DeskWindow& frame() { return *window_; }
    /// Shows the window; the camp is read while it is alive. Without a folder the last camp, or the first
    /// page.
    void begin();

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void speak(const QString& language);
    void makeWindow(DeskWindow::Parts parts);
    void buildParts(bool campComes);
    void openFirst();
    void tellNamed();
    void changeLanguage(const QString& language);

    QApplication& application_;
    DeskOptions options_;
    std::unique_ptr<QTranslator> ours_;
    std::unique_ptr<QTranslator> base_;
    std::unique_ptr<DeskWindow> window_;
    std::future<CampFiles> early_; ///< the first camp, being read
    bool begun_ = false;           ///< the parts are there and the first camp is asked for
};

/// Begins to read the camp named on the command line, or the one open last; no application need be there yet.
/// Not valid when the desk begins without a camp.
[[nodiscard]] std::future<CampFiles> readAhead(const DeskOptions& options);

/// The person, the place and the line named on the command line; what cannot be found, in words.
[[nodiscard]] QString showNamed(DeskWindow& window, const DeskOptions& options);

} // namespace quarterstep
