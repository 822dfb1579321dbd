// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/places/stock_work_panel.hpp"

#include "app/session/entry_words.hpp"
#include "app/session/wording.hpp"
#include "inventory/text/numbers.hpp"

#include <QAction>
#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

namespace quarterstep
{

StockWorkPanel::StockWorkPanel(QWidget* parent)
    : QFrame(parent), enter_(new QAction(tr("Enter in the ledger"), this)),
      undo_(new QAction(tr("Take back"), this)), work_(new QComboBox(this)), cause_(new QComboBox(this)),
      heading_(new QLabel(this)), complaint_(new QLabel(this)), form_(new QFormLayout)
{
    setObjectName(QStringLiteral("stockWorkFrame"));
    heading_->setProperty("role", QStringLiteral("heading"));
    heading_->setObjectName(QStringLiteral("stockWorkHeading"));
    complaint_->setProperty("role", QStringLiteral("complaint"));
    complaint_->setObjectName(QStringLiteral("stockWorkComplaint"));
    complaint_->setWordWrap(true);
    complaint_->hide();
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(12, 8, 12, 8);
    column->setSpacing(6);
    column->addWidget(heading_);
    buildFields(*column);
    column->addWidget(complaint_);
    buildButtons(*column);
    connect(work_, &QComboBox::currentIndexChanged, this, &StockWorkPanel::showFields);
    setLine({});
    showFields();
}

void StockWorkPanel::buildFields(QVBoxLayout& column)
{
    work_->setObjectName(QStringLiteral("stockWorkBox"));
    work_->setAccessibleName(tr("What happened"));
    work_->setToolTip(tr("What is entered about the chosen line"));
    work_->addItems({tr("Received"), tr("Counted by two"), tr("Written off"), tr("Hold"), tr("Let go"),
                     tr("Quarantine"), tr("Release from quarantine")});
    cause_->setObjectName(QStringLiteral("causeBox"));
    cause_->setAccessibleName(tr("Cause"));
    cause_->setToolTip(tr("Why the count changes"));
    cause_->addItem(tr("not said"), QString());
    for (const auto* cause : causesOfLoss())
        cause_->addItem(causeWords(cause), QString::fromLatin1(cause));
    form_->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    form_->setVerticalSpacing(4);
    form_->setHorizontalSpacing(8);
    form_->addRow(tr("What happened"), work_);
    quantity_ = field(*form_, QStringLiteral("stockQuantityEdit"), tr("Pieces"), tr("How many pieces"));
    form_->addRow(tr("Cause"), cause_);
    person_ = field(*form_, QStringLiteral("stockPersonEdit"), tr("For"),
                    tr("Camp code of the person they are kept for; may stay empty"));
    words_ = field(*form_, QStringLiteral("stockWordsEdit"), tr("Words"),
                   tr("The reason, or from whom they came; kept with the entry"));
    initials_ = field(*form_, QStringLiteral("stockInitialsEdit"), tr("Your initials"),
                      tr("Who enters this; stays for the next entry"));
    second_ = field(*form_, QStringLiteral("stockSecondEdit"), tr("Second initials"),
                    tr("The other person who counted; stays for the next entry"));
    column.addLayout(form_);
}

void StockWorkPanel::buildButtons(QVBoxLayout& column)
{
    auto* row = new QHBoxLayout;
    const auto button = [this, row](QAction* action, const QString& name, const QString& tooltip) {
        auto* made = new QPushButton(action->text(), this);
        made->setObjectName(name);
        made->setToolTip(tooltip);
        connect(made, &QPushButton::clicked, action, &QAction::trigger);
        connect(action, &QAction::enabledChanged, made, &QPushButton::setEnabled);
        made->setEnabled(action->isEnabled());
        row->addWidget(made);
        return made;
    };
    row->addStretch(1);
    undo_->setShortcut(QKeySequence::Undo);
    addAction(undo_);
    undo_->setEnabled(false);
    button(undo_, QStringLiteral("stockUndoButton"), tr("Takes the last entry of this place back (Ctrl+Z)"));
    button(enter_, QStringLiteral("stockEnterButton"), tr("Writes it into the ledger (Enter in a field)"))
        ->setProperty("primary", true);
    column.addLayout(row);
}

QLineEdit* StockWorkPanel::field(QFormLayout& form, const QString& name, const QString& label,
                                 const QString& tooltip)
{
    auto* edit = new QLineEdit(this);
    edit->setObjectName(name);
    edit->setAccessibleName(label);
    edit->setToolTip(tooltip);
    connect(edit, &QLineEdit::returnPressed, enter_, &QAction::trigger);
    form.addRow(label, edit);
    return edit;
}

StockWork StockWorkPanel::work() const
{
    return static_cast<StockWork>(std::max(0, work_->currentIndex()));
}

void StockWorkPanel::showFields()
{
    const auto now = work();
    const auto show = [this](QWidget* field, bool wanted) {
        field->setVisible(wanted);
        if (auto* label = form_->labelForField(field))
            label->setVisible(wanted);
    };
    show(cause_, now == StockWork::count || now == StockWork::writeOff);
    show(second_, now == StockWork::count);
    show(person_, now == StockWork::hold || now == StockWork::letGo);
    if (auto* label = qobject_cast<QLabel*>(form_->labelForField(words_)))
        label->setText(now == StockWork::receive ? tr("From") : tr("Reason"));
    words_->setAccessibleName(now == StockWork::receive ? tr("From") : tr("Reason"));
    complaint_->hide();
    Q_EMIT workChanged();
}

void StockWorkPanel::setLine(const QString& name)
{
    hasLine_ = !name.isEmpty();
    heading_->setText(hasLine_ ? tr("Enter about %1").arg(ltr(name)) : tr("Choose a line"));
    enter_->setEnabled(hasLine_);
    complaint_->hide();
}

void StockWorkPanel::start(StockWork work)
{
    work_->setCurrentIndex(static_cast<int>(work));
    quantity_->setFocus();
    quantity_->selectAll();
}

void StockWorkPanel::startWith(const QString& digit)
{
    quantity_->setText(digit);
    quantity_->setFocus();
}

/// What is missing, in words; empty when nothing is. The session asks again for what it must have.
QString StockWorkPanel::missing(const StockWish& wish, bool quantityRead) const
{
    if (!hasLine_)
        return tr("Choose a line first.");
    if (!quantityRead)
        return tr("Write the number of pieces in digits.");
    if (wish.quantity == 0 && wish.work != StockWork::count)
        return tr("Nothing happens with 0 pieces.");
    if (wish.work == StockWork::count && (wish.initials.empty() || wish.second.empty()))
        return tr("A count needs the initials of two persons.");
    if (wish.work == StockWork::count && wish.initials == wish.second)
        return tr("Two different persons count.");
    if (wish.work == StockWork::writeOff && wish.cause.empty())
        return tr("Choose the cause.");
    return {};
}

std::optional<StockWish> StockWorkPanel::read()
{
    StockWish wish;
    wish.work = work();
    const auto pieces = parseWholeNumber(quantity_->text().trimmed().toStdString(), 0, mostPieces);
    wish.quantity = pieces ? static_cast<int>(pieces.value()) : 0;
    wish.initials = initials_->text().trimmed().toStdString();
    wish.second = second_->text().trimmed().toStdString();
    wish.words = words_->text().trimmed().toStdString();
    wish.person = person_->isHidden() ? std::string() : person_->text().trimmed().toStdString();
    wish.cause = cause_->isHidden() ? std::string() : cause_->currentData().toString().toStdString();
    const auto complaint = missing(wish, static_cast<bool>(pieces));
    complaint_->setText(complaint);
    complaint_->setVisible(!complaint.isEmpty());
    return complaint.isEmpty() ? std::optional(wish) : std::nullopt;
}

void StockWorkPanel::reset()
{
    for (auto* edit : {quantity_, words_, person_})
        edit->clear();
    cause_->setCurrentIndex(0);
    complaint_->hide();
}

void StockWorkPanel::setUndo(bool possible)
{
    undo_->setEnabled(possible);
}

namespace
{
EntryKind kindOf(StockWork work)
{
    switch (work) {
    case StockWork::receive:
        return EntryKind::received;
    case StockWork::count:
        return EntryKind::counted;
    case StockWork::writeOff:
        return EntryKind::writtenOff;
    case StockWork::hold:
        return EntryKind::held;
    case StockWork::quarantine:
        return EntryKind::quarantined;
    default:
        return EntryKind::released;
    }
}

SingleWork singleOf(const std::string& line, const StockWish& wish)
{
    SingleWork single;
    single.line = line;
    single.quantity = wish.quantity;
    single.actor = wish.initials;
    single.reason = wish.words;
    single.cause = wish.cause;
    single.person = wish.person;
    single.kind = kindOf(wish.work);
    single.fromQuarantine = wish.work == StockWork::release;
    return single;
}
} // namespace

Role roleFor(StockWork work)
{
    if (work == StockWork::receive || work == StockWork::count)
        return roleAskedBy(work == StockWork::receive ? "receive" : "count");
    return roleAskedBy("record", wordOf(kindOf(work)));
}

StockWishEntries entriesOf(const Camp& camp, const std::string& line, const StockWish& wish)
{
    QuantityRow row;
    row.line = line;
    row.quantity = wish.quantity;
    if (wish.work == StockWork::receive)
        return {deliveryOf({row}, {wish.initials, wish.words, {}, false, {}}), {}};
    if (wish.work == StockWork::count) {
        const auto index = camp.lineNamed(line);
        const bool differs = index && camp.stock()[*index].onHand != wish.quantity;
        row.cause = differs ? wish.cause : std::string();
        row.reason = wish.words;
        auto work = countOf(camp, {row}, {wish.initials, wish.second, wish.words, row.cause});
        return {std::move(work.entries), std::move(work.findings)};
    }
    return {{singleEntry(singleOf(line, wish))}, {}};
}

} // namespace quarterstep
