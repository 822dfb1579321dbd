// SPDX-License-Identifier: GPL-3.0-or-later
// The boxes for the next camp, in the place Stock: money and weight with sliders, the curve with its knee,
// what to buy and why, what goes into which box, how the plan does on people it was not made for, and who
// goes without. The plan is made on a thread of its own by the function behind the verb `pack`; nothing is
// entered.
#pragma once

#include "app/session/pack_camp.hpp"

#include <QWidget>

#include <memory>

class QAction;
class QComboBox;
class QGridLayout;
class QLabel;
class QPushButton;
class QSpinBox;
class QTabBar;
class QTableView;
class QVBoxLayout;

namespace quarterstep
{

class ChartView;
class LongWork;
class MessageBar;
class NumberBox;
class PackingDraws;
class PaperWorker;
class CellsModel;

class PackingPanel final : public QWidget
{
    Q_OBJECT

  public:
    /// What the table shows, in the order of the tabs.
    enum class List { order, boxes, checked, without, runOuts, leftOut, curve };

    PackingPanel(MessageBar& messages, LongWork& work, QWidget* parent = nullptr);
    ~PackingPanel() override;

    /// Plans for this camp from now on; null: none. It must live as long as it is shown.
    void take(Camp* camp);
    void setPrinter(const QString& name) { printer_ = name; }
    void restyle();
    /// Waits until the plan that is made has ended; for pictures and tests.
    void waitForPlan();
    /// Puts the keyboard where one begins.
    void begin();

    [[nodiscard]] PackWish wish() const;
    [[nodiscard]] const PackOfCamp* plan() const { return plan_.get(); }
    void takeSupplier(const QString& path);
    /// A file of prescriptions; empty: the ledger.
    void takeDemand(const QString& path);
    void saveOrder(const QString& path);
    void saveBoxes(const QString& path);

  public Q_SLOTS:
    void makePlan();
    void showList(int list);
    void print();

  Q_SIGNALS:
    void planEnded();

  private:
    // packing_layout.cpp
    QWidget* buildQuestion();
    QWidget* buildAnswer();
    void buildSources(QGridLayout& grid);
    void buildLimits(QGridLayout& grid);
    void buildActions();
    QAction* command(const QString& words, const QKeySequence& key, void (PackingPanel::*run)());

    // packing_panel.cpp
    void ended(const std::exception_ptr& problem, bool stopped, std::unique_ptr<PackOfCamp>& plan);
    void askSupplier();
    void askDemand(int place);
    void askOrder();
    void askBoxes();
    [[nodiscard]] QString askWhereTo(const QString& words, const QString& name);
    void showState();
    void showAnswer();
    void showCurve();
    [[nodiscard]] QString answerWords() const;

    MessageBar& messages_;
    LongWork& work_;
    PaperWorker* papers_;
    Camp* camp_ = nullptr;
    QString printer_;
    QString supplier_; ///< path of the supplier's list; empty: none chosen
    std::unique_ptr<PackOfCamp> plan_;
    PackWish planned_; ///< what the plan was asked
    bool planning_ = false;
    int asked_ = 0; ///< plans asked for; what an earlier camp's plan finds is not shown

    CellsModel* rows_;
    QLabel* supplierWords_ = nullptr;
    QComboBox* demand_ = nullptr;
    NumberBox* budget_ = nullptr;
    NumberBox* weight_ = nullptr;
    QSpinBox* boxes_ = nullptr;
    QSpinBox* pieces_ = nullptr;
    QSpinBox* people_ = nullptr;
    PackingDraws* draws_ = nullptr;
    QPushButton* planButton_ = nullptr;
    QLabel* state_ = nullptr;
    ChartView* curve_ = nullptr;
    QLabel* answer_ = nullptr;
    QTabBar* lists_ = nullptr;
    QTableView* view_ = nullptr;
    QList<QPushButton*> outputs_; ///< what a plan can be put into
};

} // namespace quarterstep
