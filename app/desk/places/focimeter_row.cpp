// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/places/focimeter_row.hpp"

#include "app/desk/card/key_guard.hpp"
#include "app/session/wording.hpp"
#include "core/optics/notation.hpp"

#include <QGridLayout>
#include <QLabel>

namespace quarterstep
{

FocimeterRow::FocimeterRow(QWidget* parent) : QWidget(parent), said_(new QLabel(this))
{
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    int column = 0;
    for (const auto eye : bothEyes) {
        const bool right = eye == Eye::right;
        auto* label = new QLabel(right ? tr("Read, R") : tr("L"), this);
        label->setProperty("role", QStringLiteral("hint"));
        auto* edit = new GuardedEdit(FieldForm::eye, this);
        edit->setObjectName(right ? QStringLiteral("readRightEdit") : QStringLiteral("readLeftEdit"));
        edit->setAccessibleName(right ? tr("Right lens as the focimeter reads it")
                                      : tr("Left lens as the focimeter reads it"));
        edit->setToolTip(right ? tr("Right lens as the focimeter reads it, dioptres: -1.25 -0.50 x 90")
                               : tr("Left lens as the focimeter reads it, dioptres: -1.25 -0.50 x 90"));
        edit->setLayoutDirection(Qt::LeftToRight);
        edit->setAlignment(Qt::AlignLeft | Qt::AlignAbsolute | Qt::AlignVCenter);
        label->setBuddy(edit);
        connect(edit, &QLineEdit::textEdited, this, &FocimeterRow::judge);
        connect(edit, &GuardedEdit::keyRefused, this, [this](const QString& words) {
            if (words.isEmpty())
                return judge();
            said_->setText(words);
            said_->show();
        });
        grid->addWidget(label, 0, column++);
        grid->addWidget(edit, 0, column++);
        read_.of(eye) = edit;
    }
    setFocusProxy(read_.right);
    said_->setObjectName(QStringLiteral("focimeterSaid"));
    said_->setProperty("role", QStringLiteral("complaint"));
    said_->setWordWrap(true);
    said_->hide();
    grid->addWidget(said_, 1, 0, 1, column);
}

/// A field that goes with the row loses the focus and says so: nobody is there to hear it any more.
FocimeterRow::~FocimeterRow()
{
    for (const auto eye : bothEyes)
        read_.of(eye)->disconnect(this);
}

void FocimeterRow::setSupply(const Supply& supply)
{
    const bool same = supply.power.right == supply_.power.right && supply.power.left == supply_.power.left;
    supply_ = supply;
    if (!same)
        clear();
}

void FocimeterRow::clear()
{
    for (const auto eye : bothEyes)
        read_.of(eye)->clear();
    said_->hide();
}

PairReading FocimeterRow::reading() const
{
    PairReading reading;
    for (const auto eye : bothEyes)
        if (const auto power = parsePower(read_.of(eye)->text().trimmed().toStdString()))
            reading.of(eye) = power.value(); // else not typed yet, or not whole yet
    return reading;
}

void FocimeterRow::judge()
{
    const auto read = reading();
    QStringList words;
    for (const auto& off : offLabel(supply_, read))
        words << (off.eye == Eye::right ? tr("right lens: %1") : tr("left lens: %1")).arg(say(off.sentence));
    said_->setText(words.join(QLatin1Char('\n')));
    said_->setVisible(!words.isEmpty());
    Q_EMIT judged(agrees(supply_, read));
}

} // namespace quarterstep
