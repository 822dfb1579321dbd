// SPDX-License-Identifier: GPL-3.0-or-later
// The place Dispense: who waits, the card, the pairs to pull, the power plane, the hand-over. It holds no
// rule: what fits is the recommendation's word, what may be given is the session's.
#pragma once

#include "app/desk/plots/plot_data.hpp"
#include "app/session/hand_over.hpp"

#include <QWidget>

class QLabel;
class QListView;
class QPushButton;
class QScrollArea;
class QSplitter;
class QStackedWidget;
class QTableView;

namespace quarterstep
{

class AnswerPanel;
class CriteriaModel;
class HandOverPanel;
class MessageBar;
class PairsModel;
class PlaneModel;
class PlotView;
class PrescriptionCard;
class WaitingModel;

class DispensePlace final : public QWidget
{
    Q_OBJECT

  public:
    explicit DispensePlace(MessageBar& messages, QWidget* parent = nullptr);
    ~DispensePlace() override;

    /// Serves from this camp from now on and, where its folder has one, puts the people of its people.csv
    /// into the waiting list; null: from none. The camp must live as long as it is shown. Throws Error.
    void take(Camp* camp);
    /// Shows the counts of the camp anew after something else moved stock.
    void refresh();
    /// Puts the people of a table into the waiting list. Throws Error.
    void loadPeople(const std::string& path);
    /// Fills the card with a person of the list and asks for a suggestion; false when there is none of that
    /// code.
    bool choosePerson(const std::string& code);
    void restyle();

  public Q_SLOTS:
    void newPerson();
    void suggest();
    void giveChosen();
    void takeBackLast();
    void togglePlaneTable();

  Q_SIGNALS:
    void campChanged();

  private:
    /// A hand-over of this window, for taking back.
    struct Given {
        std::string entry;
        std::string person;
        QString lines;
    };

    QWidget* buildLeft();
    QWidget* buildMiddle();
    QWidget* buildRight();
    QWidget* buildWhy();
    void fitCard();
    void showPlaneTable(bool on);
    void connectParts();
    void takeRow(int row);
    void showAnswer(int index);
    void showPair(int row);
    void showPlane(const Candidate* chosen);
    void forgetAnswer();
    void judgeHandOver();
    void tellEmptyList();
    void refreshAfterMove(const std::string& person);
    void lookAgain();
    [[nodiscard]] const Recommendation* answer() const;
    [[nodiscard]] HandOver handOverOf(const Candidate& candidate);
    [[nodiscard]] QString toldAfter(const Entry& entry, const Candidate& given) const;

    MessageBar& messages_;
    Camp* camp_ = nullptr;
    std::optional<PersonRecord> record_;
    std::vector<Recommendation> answers_;
    std::size_t shownAnswer_ = 0;
    std::vector<Given> given_;
    bool handedOver_ = false; ///< the answer shown has been acted on

    WaitingModel* waiting_;
    PairsModel* pairs_;
    CriteriaModel* criteria_;
    PlaneModel* plane_;
    PrescriptionCard* card_ = nullptr;
    AnswerPanel* answerPanel_ = nullptr;
    HandOverPanel* handOver_ = nullptr;
    PlotView* plot_ = nullptr;
    QScrollArea* cardScroll_ = nullptr;
    QTableView* waitingView_ = nullptr;
    QListView* pairsView_ = nullptr;
    QStackedWidget* planePages_ = nullptr;
    QPushButton* tableButton_ = nullptr;
    QLabel* waitingHint_ = nullptr;
    QLabel* pairsHint_ = nullptr;
};

} // namespace quarterstep
