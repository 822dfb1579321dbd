// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/delegates/meaning_delegate.hpp"

#include "app/desk/bringing/meaning_words.hpp"
#include "app/session/exchange.hpp"

#include <QComboBox>

namespace quarterstep
{

QWidget* MeaningDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem& /*option*/,
                                       const QModelIndex& /*index*/) const
{
    auto* box = new QComboBox(parent);
    box->setObjectName(QStringLiteral("meaningBox"));
    box->setAccessibleName(tr("What the column holds"));
    box->setToolTip(tr("What the column holds"));
    for (const auto& target : mapTargets())
        box->addItem(meaningWords(target), QString::fromStdString(target));
    connect(box, &QComboBox::activated, this, &MeaningDelegate::commitAndClose);
    return box;
}

/// A meaning that was chosen is taken at once, without leaving the field first.
void MeaningDelegate::commitAndClose()
{
    auto* box = qobject_cast<QWidget*>(sender());
    Q_EMIT commitData(box);
    Q_EMIT closeEditor(box);
}

void MeaningDelegate::setEditorData(QWidget* editor, const QModelIndex& index) const
{
    if (auto* box = qobject_cast<QComboBox*>(editor))
        box->setCurrentIndex(box->findData(index.data(Qt::EditRole)));
}

void MeaningDelegate::setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const
{
    if (const auto* box = qobject_cast<QComboBox*>(editor))
        model->setData(index, box->currentData(), Qt::EditRole);
}

} // namespace quarterstep
