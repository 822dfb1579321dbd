// SPDX-License-Identifier: GPL-3.0-or-later
// Bringing prescriptions in: a file, the clipboard or the files of instruments is read as a dry run on a
// thread of its own; how each row was read and what was found stands in a preview; then the rows are kept and
// stand in the waiting list.
#pragma once

#include "app/session/bring_in.hpp"

#include <QStringList>
#include <QWidget>

#include <exception>
#include <functional>

class QBoxLayout;
class QCheckBox;
class QLabel;
class QPushButton;
class QTableView;

namespace quarterstep
{

class BroughtRowsModel;
class FindingListModel;
class FoldingRow;
class LongWork;
class MessageBar;
class TableReading;
struct Job;

class BringInPanel final : public QWidget
{
    Q_OBJECT

  public:
    BringInPanel(MessageBar& messages, LongWork& work, QWidget* parent = nullptr);
    ~BringInPanel() override;

    /// Brings into this folder from now on; codes that are waiting already are asked for at each reading.
    void begin(const QString& campFolder, std::function<std::set<std::string>()> waiting);
    [[nodiscard]] bool isBusy() const { return busy_; }
    /// While another part is shown it asks for none: a stack asks all its pages.
    [[nodiscard]] int heightForWidth(int width) const override
    {
        return isHidden() ? 0 : QWidget::heightForWidth(width);
    }
    /// The dry run shown; null without one.
    [[nodiscard]] const BroughtIn* shown() const { return read_.get(); }

  public Q_SLOTS:
    void openFiles(const QStringList& paths);
    void takeClipboard();
    /// A map as `quarterstep import --map` takes it.
    void useMap(const QString& path);
    void saveMap(const QString& path);
    void bringIn();

  Q_SIGNALS:
    /// These rows are kept and come to wait.
    void broughtIn(const std::shared_ptr<const std::vector<quarterstep::TableRow>>& rows);
    void backWanted();
    /// A reading or bringing in ended, however it did.
    void settled();

  private:
    // bring_in_layout.cpp
    void buildSources(QBoxLayout& column);
    QWidget* buildTable();
    QWidget* buildPreview();
    void buildEnd(QBoxLayout& column);
    QPushButton* button(const char* name, const QString& text, const QString& tooltip);

    // bring_in_panel.cpp
    void askFiles();
    void askMap();
    void askMapTarget();
    void take(BringSource source);
    void readAgain();
    void read();
    void readingEnded(const std::shared_ptr<Reading<BringSource>>& source,
                      const std::shared_ptr<BroughtIn>& read, const std::exception_ptr& problem,
                      bool stopped);
    void keepingEnded(const std::shared_ptr<std::string>& path, const std::exception_ptr& problem,
                      bool stopped);
    void start(const QString& words, std::function<void(const Job&)> work,
               std::function<void(const std::exception_ptr&, bool)> ended);
    void showRead();
    void showFindings();
    void forget();

    MessageBar& messages_;
    LongWork& work_;
    QString folder_;
    QString begunIn_; ///< the folder for which the work at hand was begun
    std::function<std::set<std::string>()> waiting_;
    std::optional<BringSource> source_;
    TableMap given_;
    std::shared_ptr<const BroughtIn> read_;
    bool busy_ = false;
    std::uint64_t asked_ = 0; ///< ticket of the work that is begun or waits while busy
    bool again_ = false;      ///< something was corrected while it was being read

    BroughtRowsModel* rows_;
    FindingListModel* findings_;
    TableReading* table_ = nullptr;
    QWidget* tableFrame_ = nullptr;
    QLabel* sourceWords_ = nullptr;
    QLabel* counted_ = nullptr;
    QCheckBox* onlyTold_ = nullptr;
    QTableView* rowsView_ = nullptr;
    QLabel* findingsTitle_ = nullptr;
    QTableView* findingsView_ = nullptr;
    QPushButton* saveMap_ = nullptr;
    QPushButton* bring_ = nullptr;
};

} // namespace quarterstep
