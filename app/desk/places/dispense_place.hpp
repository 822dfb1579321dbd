// SPDX-License-Identifier: GPL-3.0-or-later
// The place Dispense: who waits, the card, the pairs to pull, the power plane, the hand-over. It holds no
// rule: what fits is the recommendation's word, what may be given is the session's.
#pragma once

#include "app/desk/places/desk_place.hpp"
#include "app/desk/places/hand_over_panel.hpp"
#include "app/paper/content/paper.hpp"
#include "app/session/hand_over.hpp"

#include <memory>
#include <set>

class QKeySequence;
class QLabel;
class QListView;
class QScrollArea;
class QSplitter;
class QTableView;

namespace quarterstep
{

class AnswerPanel;
class LinePanel;
class OrdersPanel;
class PagesFrame;
class PairsModel;
class PaperWorker;
class PlanePanel;
class PrescriptionCard;
class ReaderCard;
class WaitingModel;
class WhyPanel;
struct Order;
struct OrderedFor;

class DispensePlace final : public DeskPlace
{
    Q_OBJECT

  public:
    explicit DispensePlace(const DeskParts& parts, QWidget* parent = nullptr);
    ~DispensePlace() override;

    /// Where the folder has a people.csv, its people stand in the list from now on.
    void take(Camp* camp) override;
    void campMoved() override { refresh(); }
    /// Puts the people of a table into the waiting list. Throws Error.
    void loadPeople(const std::string& path);
    /// Puts these behind the people who wait, a few at a time, so that the window goes on; rows without a
    /// record and codes that wait already are left out.
    void addPeople(std::shared_ptr<const std::vector<TableRow>> rows);
    /// Codes of all who wait or are on their way into the list.
    [[nodiscard]] std::set<std::string> waitingCodes() const;
    /// The people of the list whose rows can be read, in its order.
    [[nodiscard]] std::vector<PersonRecord> people() const;
    [[nodiscard]] int peopleCount() const;
    /// The person on the card, as suggested for; empty without one.
    [[nodiscard]] const std::optional<PersonRecord>& personOnCard() const { return record_; }
    /// Fills the card with a person of the list and asks for a suggestion; false when there is none of that
    /// code.
    bool choosePerson(const std::string& code);
    void restyle() override;
    /// The printer for notes, letters and orders; empty: PDF files in the camp folder.
    void setPrinter(const QString& name) { printer_ = name; }
    [[nodiscard]] PrescriptionCard& card() { return *card_; }
    /// Buttons of the window for a person without a card, and for people of a table.
    void addCommands(QWidget* newPerson, QWidget* loadPeople);

    /// Pages of the upper left part.
    enum PeoplePage { peoplePage, linePage, ordersPage };
    void showPeoplePage(PeoplePage page);
    [[nodiscard]] LinePanel& line() { return *line_; }
    [[nodiscard]] WhyPanel& why() { return *why_; }

  public Q_SLOTS:
    void newPerson();
    /// The short way for a plain reader.
    void newReader();
    bool takeNamedPerson();
    void suggest();
    void giveChosen();
    void giveAndPrint();
    void takeBackLast();
    void printNote();
    void writeLetter();
    void orderCustom();
    void goesWithout();
    void togglePlaneTable();

  private:
    /// Something entered at this window, for taking back.
    struct Given {
        std::string entry;
        std::string person;
        QString lines;
    };

    void refresh();
    /// The act of an optician: asks for the PIN where there is one.
    void asOptician(std::function<void()> act);
    void give();
    void takeBack(const Given& last);
    QWidget* buildColumns();
    QWidget* buildLeft();
    QWidget* buildPeople();
    QWidget* buildCards();
    QWidget* buildAnswer();
    QWidget* buildMiddle();
    QWidget* buildRight();
    void fitParts();
    void connectParts();
    void connectHandOver();
    void connectLine();
    void allArrive();
    void cardArrives();
    void offerChosen();
    void showFromLine(const std::string& person, Purpose purpose, const std::vector<Part>& parts);
    void addKey(const QKeySequence& keys, void (DispensePlace::*run)());
    void nextPair();
    void previousPair();
    void findOrder();
    void arrive();
    bool askLedger();
    [[nodiscard]] const PersonRecord* recordOf(const std::string& person) const;
    [[nodiscard]] OrderedFor orderedFrom(const Order& order) const;
    void writeLaboratoryFile(const QString& order);
    void takeRow(int row);
    void showAnswer(int index);
    void showPair(int row);
    void showPlane(const Candidate* chosen);
    void forgetAnswer();
    void judgeHandOver();
    void judgeTrial();
    void tellEmptyList();
    void refreshAfterMove(const std::string& person);
    void lookAgain();
    void print(PaperKind kind);
    void post(Entry entry, const QString& done);
    [[nodiscard]] std::string freeCode() const;
    [[nodiscard]] const Recommendation* answer() const;
    [[nodiscard]] const Candidate* chosen() const;
    [[nodiscard]] HandOver handOverOf(const Candidate& candidate);
    [[nodiscard]] QString toldAfter(const Entry& entry, const Candidate& given) const;
    [[nodiscard]] std::optional<Given> toTakeBack() const;
    [[nodiscard]] HandOverPanel::Ready readyNow() const;

    DeskParts parts_;
    MessageBar& messages_;
    Camp* camp_ = nullptr;
    std::optional<PersonRecord> record_;
    std::vector<Recommendation> answers_;
    std::size_t shownAnswer_ = 0;
    std::vector<Given> given_;
    struct Arriving {
        std::shared_ptr<const std::vector<TableRow>> rows;
        std::size_t next = 0;
        std::set<std::string> known; ///< codes that were there before
    };
    std::vector<Arriving> arriving_;
    int askedFor_ = 0;        ///< rows of the list for which the ledger was asked what they were given
    bool handedOver_ = false; ///< the answer shown has been acted on
    QString printer_;

    WaitingModel* waiting_;
    PairsModel* pairs_;
    PaperWorker* papers_;
    PrescriptionCard* card_ = nullptr;
    ReaderCard* reader_ = nullptr;
    AnswerPanel* answerPanel_ = nullptr;
    HandOverPanel* handOver_ = nullptr;
    PlanePanel* plane_ = nullptr;
    WhyPanel* why_ = nullptr;
    LinePanel* line_ = nullptr;
    OrdersPanel* orders_ = nullptr;
    PagesFrame* people_ = nullptr;
    PagesFrame* cards_ = nullptr;
    QScrollArea* cardScroll_ = nullptr;
    QTableView* waitingView_ = nullptr;
    QListView* pairsView_ = nullptr;
    QLabel* waitingHint_ = nullptr;
    QLabel* pairsHint_ = nullptr;
};

} // namespace quarterstep
