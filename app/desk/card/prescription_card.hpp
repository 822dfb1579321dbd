// SPDX-License-Identifier: GPL-3.0-or-later
// The card of one person: typed or taken over from the waiting list. Keyboard first: Tab walks right, left,
// PD, addition …, Enter asks for a suggestion. What cannot be read is said under its field. An eye is one
// text, or the same text in three fields (Ctrl+E).
#pragma once

#include "app/desk/card/card_fields.hpp"

#include <QWidget>

#include <optional>

class QCheckBox;
class QComboBox;
class QGridLayout;
class QLabel;
class QLineEdit;
class QPushButton;

namespace quarterstep
{

class EyeField;
class PowerFields;

class PrescriptionCard final : public QWidget
{
    Q_OBJECT

  public:
    explicit PrescriptionCard(QWidget* parent = nullptr);
    ~PrescriptionCard() override;

    /// Fills the fields; what the card does not show stays with the record.
    void load(const PersonRecord& record);
    /// Empties the card and puts the cursor into the first field.
    void clear();
    /// The record as the fields say, or empty after showing a complaint under each field that cannot be read.
    [[nodiscard]] std::optional<PersonRecord> read();
    /// The code, when nothing else was typed: somebody of the waiting list may be meant. Else empty.
    [[nodiscard]] QString onlyPerson();
    void focusRightEye();
    /// Each eye in three fields instead of one text.
    void setThreeFields(bool on);
    [[nodiscard]] bool threeFields() const;

  Q_SIGNALS:
    void suggestWanted();
    void edited();
    /// The cursor left the code and nothing else was typed yet.
    void personNamed();

  private:
    struct Row {
        QLineEdit* edit = nullptr;
        QLabel* complaint = nullptr;
        QString loaded;
    };
    using Places = std::vector<std::pair<CardField, int>>;

    void buildIdentity(QGridLayout& grid);
    void buildPurpose(QGridLayout& grid);
    void buildEyes(QGridLayout& grid);
    void buildMeasures(QGridLayout& grid, const std::vector<Places>& lines);
    void buildSigns(QGridLayout& grid);
    void buildMore(QGridLayout& grid);
    void connectEye(CardField field, PowerFields* three);
    QWidget* labelled(CardField field, QWidget* parent);
    void makeField(CardField field, QWidget* parent);
    QLabel* makeComplaint(CardField field);
    void showComplaint(Row& row, const QString& text);
    void checkEye(CardField field, bool alsoComplain);
    void tellReadings();
    void showEyeForms();
    void takeOtherEye(CardField field);
    [[nodiscard]] Row& row(CardField field) { return rows_[static_cast<std::size_t>(field)]; }
    [[nodiscard]] EyeField* eyeField(CardField field);

    PersonRecord base_;
    std::array<Row, cardFieldCount> rows_;
    QComboBox* purpose_ = nullptr;
    QPushButton* formButton_ = nullptr;
    PerEye<PowerFields*> three_{nullptr, nullptr};
    PerEye<QLabel*> readBack_{nullptr, nullptr};
    QLabel* readings_ = nullptr;
    std::vector<std::pair<Sign, QCheckBox*>> signs_;
};

} // namespace quarterstep
