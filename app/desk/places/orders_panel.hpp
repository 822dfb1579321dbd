// SPDX-License-Identifier: GPL-3.0-or-later
// Custom orders: found by the code of the person, and led on: arrived, checked, collected; made again; not
// collected.
#pragma once

#include "app/desk/places/desk_place.hpp"
#include "app/session/camp.hpp"
#include "core/record/entry.hpp"

class QGridLayout;
class QLineEdit;
class QPushButton;
class QTableView;

namespace quarterstep
{

struct Order;
class OrdersModel;

class OrdersPanel final : public QWidget
{
    Q_OBJECT

  public:
    explicit OrdersPanel(const DeskParts& parts, QWidget* parent = nullptr);
    ~OrdersPanel() override;

    void take(Camp* camp);
    void refresh();
    /// Puts the cursor where a code is looked for.
    void find();
    void setActor(const std::string& initials) { actor_ = initials; }

  Q_SIGNALS:
    /// A step was entered: it can be taken back by its entry.
    void moved(const QString& person, const QString& entry, const QString& words);
    /// Somebody wants the file for a laboratory of the order with this id.
    void fileWanted(const QString& order);

  private:
    void buildSteps(QGridLayout& grid);
    void judgeSteps();
    void take(EntryKind step);
    void wantFile();
    void enter(const Order& chosen, EntryKind step);

    MessageBar& messages_;
    PinGuard& pins_;
    Camp* camp_ = nullptr;
    std::string actor_;
    OrdersModel* orders_;
    QLineEdit* find_;
    QTableView* view_ = nullptr;
    QLineEdit* note_;
    std::vector<std::pair<EntryKind, QPushButton*>> steps_;
    QPushButton* file_ = nullptr;
};

} // namespace quarterstep
