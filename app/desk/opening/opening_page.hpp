// SPDX-License-Identifier: GPL-3.0-or-later
// The first page: three ways to begin, the camps opened last, and what was wrong with a folder that could
// not be opened.
#pragma once

#include "core/finding.hpp"

#include <QStringList>
#include <QWidget>

class QFrame;
class QLabel;
class QPlainTextEdit;
class QPushButton;
class QVBoxLayout;

namespace quarterstep
{

class OpeningPage final : public QWidget
{
    Q_OBJECT

  public:
    explicit OpeningPage(QWidget* parent = nullptr);

    /// The camps opened last, and whether one is open behind this page.
    void showCamps(const QStringList& folders, bool oneIsOpen);
    /// What was found in a folder that was not opened; empty findings put the part away.
    void showProblems(const QString& folder, const std::vector<Finding>& findings);

  Q_SIGNALS:
    void sampleWanted();
    void sampleAfreshWanted();
    void practiceWanted();
    void ownWanted(const QString& folder); ///< empty: a folder is still to be chosen
    void folderWanted(const QString& folder);
    void askFolderWanted();
    void backWanted();

  private:
    QFrame* way(const QString& title, const QString& words, QVBoxLayout*& column);
    QWidget* buildWays();
    QWidget* buildProblems();
    QPushButton* button(QVBoxLayout& column, const char* name, const QString& text, const QString& tooltip);

    QFrame* problems_ = nullptr;
    QLabel* problemsHeading_ = nullptr;
    QPlainTextEdit* problemsText_ = nullptr;
    QLabel* problemsWayOut_ = nullptr;
    QPushButton* startHere_ = nullptr;
    QVBoxLayout* camps_ = nullptr;
    QPushButton* practice_ = nullptr;
    QPushButton* back_ = nullptr;
    QString problemFolder_;
};

} // namespace quarterstep
