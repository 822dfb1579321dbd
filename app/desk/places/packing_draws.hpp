// SPDX-License-Identifier: GPL-3.0-or-later
// How the draws of a plan for the boxes are made: what a table leaves out and may be taken as given, the
// published mix, how many draws, and the lot. Few change it, so it is folded away; what is chosen is told
// beside the fold, and kept for this camp on this laptop.
#pragma once

#include "app/session/pack_camp.hpp"

#include <QWidget>

class QCheckBox;
class QGridLayout;
class QLabel;
class QPushButton;
class QSpinBox;

namespace quarterstep
{

class PackingDraws final : public QWidget
{
    Q_OBJECT

  public:
    explicit PackingDraws(QWidget* parent = nullptr);

    /// The choices kept for this camp folder; the usual ones where there are none.
    void begin(const QString& folder);
    void putInto(PackWish& wish) const;
    /// Something can be assumed of a table; a ledger says what was given.
    void setOfTable(bool table);

  Q_SIGNALS:
    void changed();

  private:
    void buildAssumptions(QGridLayout& grid);
    void buildFigures(QGridLayout& grid);
    void fold(bool away);
    void take();
    void tell();

    QString folder_;
    bool reading_ = false; ///< what is kept is put into the fields
    QPushButton* foldButton_;
    QLabel* words_;
    QWidget* body_;
    QCheckBox* centred_ = nullptr;
    QCheckBox* final_ = nullptr;
    QCheckBox* vertex_ = nullptr;
    QSpinBox* prior_ = nullptr;
    QSpinBox* scenarios_ = nullptr;
    QSpinBox* seed_ = nullptr;
};

} // namespace quarterstep
