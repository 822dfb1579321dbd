// SPDX-License-Identifier: GPL-3.0-or-later
// The window of the desk: which camp is open, messages, and the places. Without a camp it offers to open one.
#pragma once

#include "app/desk/theme.hpp"
#include "app/session/camp.hpp"

#include <QMainWindow>

class QButtonGroup;
class QComboBox;
class QHBoxLayout;
class QLabel;
class QPushButton;
class QStackedWidget;

namespace quarterstep
{

class AuditPlace;
class DispensePlace;
class MessageBar;
class StockPlace;

class DeskWindow final : public QMainWindow
{
    Q_OBJECT

  public:
    explicit DeskWindow(QWidget* parent = nullptr);

    /// Opens a camp folder; what goes wrong is said in the window. Returns whether it is open.
    bool openCamp(const QString& folder);
    /// The places, in the order of their buttons and keys.
    enum class Place { dispense, stock, audit };
    void showPlace(Place place);
    /// Loads a person of the waiting list; false when there is none of that code.
    bool choosePerson(const QString& code);
    [[nodiscard]] MessageBar& messages() { return *messages_; }
    [[nodiscard]] DispensePlace& dispense() { return *dispense_; }
    [[nodiscard]] StockPlace& stock() { return *stock_; }
    [[nodiscard]] AuditPlace& audit() { return *audit_; }

  private:
    QWidget* buildHeader();
    void buildPlaceButtons(QHBoxLayout& row);
    QWidget* buildEmptyState();
    QPushButton* command(QHBoxLayout& row, const QString& name, const QString& text, const QString& tooltip,
                         const QKeySequence& keys, void (DeskWindow::*run)());
    void askFolder();
    void askTable();
    void newPerson();
    void showCamp();
    void takeTheme(int index);

    std::optional<Camp> camp_; ///< before the places that show it
    MessageBar* messages_;
    DispensePlace* dispense_;
    StockPlace* stock_;
    AuditPlace* audit_;
    QButtonGroup* placeButtons_ = nullptr;
    QStackedWidget* pages_;
    QLabel* site_ = nullptr;
    QLabel* summary_ = nullptr;
    QPushButton* newPersonButton_ = nullptr;
    QPushButton* tableButton_ = nullptr;
    QComboBox* theme_ = nullptr;
};

} // namespace quarterstep
