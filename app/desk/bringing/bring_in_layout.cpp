// SPDX-License-Identifier: GPL-3.0-or-later
// The widgets of the part Bring in and where they stand; what they do is in bring_in_panel.cpp.
#include "app/desk/bringing/bring_in_panel.hpp"

#include "app/desk/bringing/table_reading.hpp"
#include "app/desk/models/brought_rows_model.hpp"
#include "app/desk/models/finding_list_model.hpp"
#include "app/desk/places/parts.hpp"
#include "app/desk/places/table_room.hpp"
#include "app/desk/shell/folding_row.hpp"
#include "app/desk/shell/wrap_layout.hpp"

#include <QAction>
#include <QCheckBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

namespace quarterstep
{

namespace
{
void keyed(QWidget& around, QPushButton& button, const QKeySequence& keys)
{
    auto* action = new QAction(button.text(), &around);
    action->setShortcut(keys);
    action->setShortcutContext(Qt::WindowShortcut);
    QObject::connect(action, &QAction::triggered, &button, [target = &button] {
        if (target->isVisible() && target->isEnabled())
            target->click();
    });
    around.addAction(action);
    button.setToolTip(
        QStringLiteral("%1 (%2)").arg(button.toolTip(), keys.toString(QKeySequence::NativeText)));
}
} // namespace

BringInPanel::BringInPanel(MessageBar& messages, LongWork& work, QWidget* parent)
    : QWidget(parent), messages_(messages), work_(work), rows_(new BroughtRowsModel(this)),
      findings_(new FindingListModel(this))
{
    setObjectName(QStringLiteral("bringInPanel"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    buildSources(*column);
    auto* row = new FoldingRow(this);
    tableFrame_ = buildTable();
    constexpr int tableShare = 2;
    constexpr int previewShare = 3;
    constexpr int previewCharacters = 100;
    row->add(tableFrame_, tableShare);
    auto* preview = buildPreview();
    row->add(preview, previewShare, previewCharacters * rowsView_->fontMetrics().averageCharWidth());
    column->addWidget(row, 1);
    buildEnd(*column);
    forget();
}

BringInPanel::~BringInPanel()
{
    rowsView_->selectionModel()->disconnect(this);
}

QPushButton* BringInPanel::button(const char* name, const QString& text, const QString& tooltip)
{
    auto* made = new QPushButton(text, this);
    made->setObjectName(QLatin1String(name));
    made->setToolTip(tooltip);
    return made;
}

void BringInPanel::buildSources(QBoxLayout& column)
{
    auto* box = new QWidget(this);
    auto* row = new WrapLayout(box);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(6);
    auto* open = button("openSourceButton", tr("Choose a file…"),
                        tr("A table (CSV, TSV), lines of JSON, FHIR, or DICOM files of instruments"));
    auto* paste = button("pasteSourceButton", tr("Take the clipboard"),
                         tr("What was copied in a spreadsheet or another program"));
    keyed(*this, *open, QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_I));
    keyed(*this, *paste, QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_V));
    connect(open, &QPushButton::clicked, this, &BringInPanel::askFiles);
    connect(paste, &QPushButton::clicked, this, &BringInPanel::takeClipboard);
    row->addWidget(open);
    row->addWidget(paste);
    sourceWords_ = hinted({}, QStringLiteral("sourceWords"));
    sourceWords_->setWordWrap(false);
    row->addWidget(sourceWords_);
    column.addWidget(box);
}

QWidget* BringInPanel::buildTable()
{
    QVBoxLayout* column = nullptr;
    auto* frame = framed(QStringLiteral("tableReadingFrame"), tr("How the table is read"), column);
    table_ = new TableReading(frame);
    connect(table_, &TableReading::corrected, this, &BringInPanel::readAgain);
    column->addWidget(table_, 1);
    auto* maps = new QWidget(frame);
    auto* row = new WrapLayout(maps);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(6);
    auto* use = button("useMapButton", tr("Use a map…"), tr("A file that says how such a table is read"));
    saveMap_ = button("saveMapButton", tr("Save this map…"),
                      tr("For the next table of this kind; `quarterstep import --map` takes it, too"));
    connect(use, &QPushButton::clicked, this, &BringInPanel::askMap);
    connect(saveMap_, &QPushButton::clicked, this, &BringInPanel::askMapTarget);
    row->addWidget(use);
    row->addWidget(saveMap_);
    column->addWidget(maps);
    return frame;
}

QWidget* BringInPanel::buildPreview()
{
    QVBoxLayout* column = nullptr;
    auto* frame = framed(QStringLiteral("previewFrame"), tr("What is read: nothing is written yet"), column);
    counted_ = hinted({}, QStringLiteral("broughtCounted"));
    column->addWidget(counted_);
    onlyTold_ = new QCheckBox(tr("Only rows about which something was found"), frame);
    onlyTold_->setObjectName(QStringLiteral("onlyToldCheck"));
    onlyTold_->setToolTip(tr("Leaves out rows that were read without a finding"));
    connect(onlyTold_, &QCheckBox::toggled, this, [this](bool only) {
        rows_->showOnlyTold(only);
        showFindings();
    });
    column->addWidget(onlyTold_);
    rowsView_ = tableOf(rows_, QStringLiteral("broughtRowsView"), tr("Rows as they are read"));
    rowsView_->setToolTip(tr("Choose a row: what was found about it stands below"));
    giveWidths(*rowsView_, {5, 8, 12});
    shareWidth(*rowsView_, {{BroughtRowsModel::foundColumn, 1}, {BroughtRowsModel::readingColumn, 1}});
    constexpr int fullReading = 64; // characters
    wrapIn(*rowsView_, BroughtRowsModel::readingColumn, fullReading, 2);
    connect(rowsView_->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            &BringInPanel::showFindings);
    giveRoom(*rowsView_, 5);
    column->addWidget(rowsView_, 3);
    findingsTitle_ = hinted({}, QStringLiteral("broughtFindingsTitle"));
    column->addWidget(findingsTitle_);
    findingsView_ = tableOf(findings_, QStringLiteral("broughtFindingsView"), tr("Findings"));
    findingsView_->setToolTip(tr("Kind, line and column in the file, what was found, and its code"));
    giveWidths(*findingsView_, {10, 8, 40, 20});
    shareWidth(*findingsView_, {{FindingListModel::sentenceColumn, 1}});
    constexpr int fullSentence = 90; // characters
    wrapIn(*findingsView_, FindingListModel::sentenceColumn, fullSentence, 2);
    giveRoom(*findingsView_, 3);
    column->addWidget(findingsView_, 1);
    return frame;
}

void BringInPanel::buildEnd(QBoxLayout& column)
{
    auto* row = new QHBoxLayout;
    auto* back = button("bringInBackButton", tr("Back"), tr("To the place before; nothing is brought in"));
    connect(back, &QPushButton::clicked, this, &BringInPanel::backWanted);
    bring_ = button("bringInButton", {}, tr("They come to stand in the waiting list"));
    bring_->setText(tr("Bring them in"));
    bring_->setProperty("primary", true);
    keyed(*this, *bring_, QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_B));
    connect(bring_, &QPushButton::clicked, this, &BringInPanel::bringIn);
    row->addWidget(back);
    row->addStretch(1);
    row->addWidget(bring_);
    column.addLayout(row);
}

} // namespace quarterstep
