// SPDX-License-Identifier: GPL-3.0-or-later
// Start my own camp: a name, the trays in a few typed lines, the lines of stock they make beside them, and
// the folder it goes into.
#pragma once

#include "app/session/tray.hpp"

#include <QWidget>

class QLabel;
class QLineEdit;
class QPlainTextEdit;
class QPushButton;
class QTimer;
class QVBoxLayout;

namespace quarterstep
{

class LinesModel;
class MessageBar;

class TrayPage final : public QWidget
{
    Q_OBJECT

  public:
    explicit TrayPage(MessageBar& messages, QWidget* parent = nullptr);

    /// Begins with this folder; empty: one under the person's documents.
    void begin(const QString& folder);

  Q_SIGNALS:
    /// stock.yaml was written into this folder.
    void campMade(const QString& folder);
    void backWanted();

  private:
    QWidget* buildTyping();
    QWidget* buildPreview();
    void buildExamples(QVBoxLayout& column);
    void addExample(const QString& lines);
    void askFolder();
    void preview();
    void make();
    QLineEdit* field(QVBoxLayout& column, const char* name, const QString& label, const QString& tooltip);

    MessageBar& messages_;
    Reading<TrayStock> stock_;
    LinesModel* lines_;
    QTimer* soon_;
    QLineEdit* name_ = nullptr;
    QPlainTextEdit* trays_ = nullptr;
    QLineEdit* folder_ = nullptr;
    QLabel* found_ = nullptr;
    QLabel* counted_ = nullptr;
    QPushButton* make_ = nullptr;
};

} // namespace quarterstep
