// SPDX-License-Identifier: GPL-3.0-or-later
// Sending prescriptions out: those of the list, or the one on the card, as FHIR, a table, lines of JSON or
// DICOM, with the rules of the camp.
#pragma once

#include "app/session/camp.hpp"
#include "app/session/send_out.hpp"

#include <QWidget>

#include <functional>

class QBoxLayout;
class QComboBox;
class QLabel;
class QPushButton;
class QTableView;

namespace quarterstep
{

class FindingListModel;
class LongWork;
class MessageBar;

/// Who may be sent out.
struct SendOutPeople {
    std::function<int()> inList;
    std::function<std::vector<PersonRecord>()> ofList;
    std::function<std::optional<PersonRecord>()> ofCard;
};

class SendOutPanel final : public QWidget
{
    Q_OBJECT

  public:
    SendOutPanel(MessageBar& messages, LongWork& work, QWidget* parent = nullptr);

    void begin(const Camp* camp, SendOutPeople people);
    /// Shows how many people there are now.
    void refresh();
    [[nodiscard]] bool isBusy() const { return busy_; }

  public Q_SLOTS:
    /// Writes the file, over one that is there; DICOM of everybody as files into this folder, over none.
    void writeTo(const QString& path);
    /// A dry run: shows what stays here or leaves otherwise.
    void check();

  Q_SIGNALS:
    void backWanted();

  private:
    void askPath();
    [[nodiscard]] ExchangeFormat format() const;
    /// Whether each person leaves in a file of their own.
    [[nodiscard]] bool fileEach() const;
    [[nodiscard]] std::vector<PersonRecord> chosen() const;
    [[nodiscard]] int count() const;
    void buildEnd(QBoxLayout& column);
    void tell(std::vector<Finding> findings);
    void run(const SendOut& wanted);
    void ended(const SendOut& wanted, std::size_t count, const SentOut& sent,
               const std::exception_ptr& problem, bool stopped);

    MessageBar& messages_;
    LongWork& work_;
    const Camp* camp_ = nullptr;
    SendOutPeople people_;
    bool busy_ = false;
    FindingListModel* findings_;
    QTableView* view_ = nullptr;
    QLabel* hint_ = nullptr;
    QComboBox* format_ = nullptr;
    QComboBox* who_ = nullptr;
    QLabel* counted_ = nullptr;
    QPushButton* check_ = nullptr;
    QPushButton* write_ = nullptr;
};

} // namespace quarterstep
