// SPDX-License-Identifier: GPL-3.0-or-later
// The short way for plain readers: age, whether distance is fine, the near power that was found by trial.
// Eight keys from the first to the list: 5 2 Tab + 2 2 5 Enter. The code of the person is offered, PD near is
// asked for where it was taken.
#pragma once

#include "core/fitting/prescription.hpp"

#include <QWidget>

#include <optional>

class QComboBox;
class QLabel;
class QLineEdit;

namespace quarterstep
{

class GuardedEdit;

class ReaderCard final : public QWidget
{
    Q_OBJECT

  public:
    explicit ReaderCard(QWidget* parent = nullptr);
    ~ReaderCard() override;

    /// Empties the fields, offers this code and puts the cursor into the age.
    void clear(const QString& code);
    /// Whether no code was offered yet.
    [[nodiscard]] bool isEmpty() const;
    /// The record, or empty after saying what is missing. Where distance is not fine, readers are not the
    /// answer: that is said, too.
    [[nodiscard]] std::optional<PersonRecord> read();

  Q_SIGNALS:
    void suggestWanted();
    void edited();

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    enum Distance { notAsked, fine, notFine };

    GuardedEdit* field(const QString& name, const QString& label, const QString& tooltip, int form);
    void addRow(const QString& label, QWidget* field);
    void changed();
    void complain(const QString& words, QWidget* at);

    GuardedEdit* age_;
    QComboBox* distance_;
    GuardedEdit* power_;
    GuardedEdit* pd_;
    GuardedEdit* person_;
    QLabel* readBack_;
    QLabel* complaint_;
};

/// "225", "2.25", "2" as dioptres; empty where it cannot be read.
[[nodiscard]] std::optional<double> readerPower(const QString& text);

} // namespace quarterstep
