// SPDX-License-Identifier: GPL-3.0-or-later
// One hand-over of the audit in full: need, pair, findings; criteria and slips; and why not: where the cost
// comes from and how much of each limit was used up.
#pragma once

#include "app/session/audit_cases.hpp"

#include <QFrame>

class QButtonGroup;
class QComboBox;
class QLabel;
class QScrollArea;
class QTableView;
class QTextBrowser;

namespace quarterstep
{

class BarsModel;
class BarsView;
class CriteriaModel;

class AuditCasePanel final : public QFrame
{
    Q_OBJECT

  public:
    explicit AuditCasePanel(QWidget* parent = nullptr);

    /// It must live while it is shown; null: nothing is chosen.
    void show(const AuditCase* one);
    void restyle();

  protected:
    void resizeEvent(QResizeEvent* event) override;

  private:
    QWidget* buildCriteria();
    void holdWords();
    QWidget* buildWhyNot();
    void showCriteria();
    void offerPictures();
    void showPicture();

    const AuditCase* shown_ = nullptr;
    CriteriaModel* criteria_;
    BarsModel* bars_;
    QLabel* heading_ = nullptr;
    QLabel* words_ = nullptr;
    QScrollArea* wordsScroll_ = nullptr;
    QButtonGroup* pairButtons_ = nullptr;
    QTableView* criteriaView_ = nullptr;
    QTextBrowser* slips_ = nullptr;
    QComboBox* pictures_ = nullptr;
    BarsView* barsView_ = nullptr;
    QLabel* whyNot_ = nullptr;
    QLabel* legend_ = nullptr;
    QTableView* barsTable_ = nullptr;
};

} // namespace quarterstep
