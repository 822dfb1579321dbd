// SPDX-License-Identifier: GPL-3.0-or-later
// The waiting line: who is here, what the plan gives them and why; promises, and a pair picked by hand with a
// reason. It plans on a worker whenever something changed; handing over stays where it is.
#pragma once

#include "app/desk/shell/line_draft.hpp"
#include "app/session/waiting_line.hpp"

#include <QWidget>

#include <atomic>
#include <set>

class QGridLayout;
class QLabel;
class QLineEdit;
class QPushButton;
class QTableView;
class QThread;

namespace quarterstep
{

class LineModel;
class MessageBar;
struct LineRow;

class LinePanel final : public QWidget
{
    Q_OBJECT

  public:
    explicit LinePanel(MessageBar& messages, QWidget* parent = nullptr);
    ~LinePanel() override;

    void take(const Camp* camp);
    /// These stand in the line from now on, after those who are there.
    void arrive(const std::vector<PersonRecord>& people);
    /// Served or gone.
    void leave(const std::string& person, std::optional<Purpose> purpose = std::nullopt);
    /// Was served for that, and it was taken back: stands where they stood, with what they were told.
    void comeBack(const std::string& person, Purpose purpose);
    /// Who waits and what they were told, and such a line put back.
    [[nodiscard]] KeptLine kept() const;
    void bringBack(const KeptLine& line);
    /// The counts of the camp changed.
    void stockMoved();
    /// The pair chosen in the list goes to the person chosen in the line, with the reason typed; without one
    /// the cursor goes there first.
    void offer(const std::vector<Part>& parts);
    /// As it was told on arrival; null when nobody of that code is here.
    [[nodiscard]] const PersonRecord* recordOf(const std::string& person) const;
    [[nodiscard]] const std::vector<std::string>& arrived() const { return arrived_; }
    [[nodiscard]] bool isPlanning() const { return thread_ != nullptr; }

  Q_SIGNALS:
    void rowChosen(const QString& person, int purpose, const std::vector<quarterstep::Part>& parts);
    /// Who waits, or what they were told, is another now.
    void lineChanged();
    /// Somebody wants those of the table, or the one on the card, to stand in the line.
    void allWanted();
    void oneWanted();
    /// Somebody wants the pair chosen in the list for the person chosen here.
    void chosenPairWanted();

  private:
    struct Planned;
    struct Offer {
        std::string person;
        Purpose purpose = Purpose::distance;
        std::vector<Part> parts;
    };

    void buildCommands(QGridLayout& grid);
    [[nodiscard]] WaitingLine& line();
    void plan();
    void planned(const Planned& work);
    void tellResult();
    void stop();
    void judge();
    void completeOffer();
    void promise();
    void gone();
    void change(const std::function<void()>& work);
    [[nodiscard]] const LineRow* chosenRow() const;

    MessageBar& messages_;
    const Camp* camp_ = nullptr;
    std::optional<WaitingLine> line_; ///< begun when the first person comes
    LineAnswer answer_;
    std::vector<std::string> arrived_;
    std::map<std::string, PersonRecord> records_;
    std::vector<PersonRecord> coming_;               ///< not judged yet
    std::vector<Told> comingTold_;                   ///< told before, not put into the line yet
    std::set<std::pair<std::string, Purpose>> left_; ///< who came, and no longer waits for this
    std::vector<Told> toldOfLeft_;
    std::optional<Offer> offer_; ///< waits for its reason
    std::unique_ptr<QThread> thread_;
    std::atomic<bool> cancelled_ = false;
    bool again_ = false;

    LineModel* model_;
    QLabel* summary_;
    QTableView* view_ = nullptr;
    QLineEdit* reason_;
    QPushButton* plan_ = nullptr;
    QPushButton* promise_ = nullptr;
    QPushButton* pick_ = nullptr;
    QPushButton* gone_ = nullptr;
};

} // namespace quarterstep
