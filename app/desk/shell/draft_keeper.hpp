// SPDX-License-Identifier: GPL-3.0-or-later
// What is typed into a form and not handed over yet survives a crash. The draft is data about a person: it
// lies in the folder of the one who is logged in (not in the camp, which is copied and carried), read by its
// owner alone, and goes when the person is served or the form is emptied.
#pragma once

#include <QMap>
#include <QObject>
#include <QString>

#include <memory>

class QLockFile;
class QTimer;
class QWidget;

namespace quarterstep
{

/// Texts, choices and ticks of a form by object name.
using DraftFields = QMap<QString, QString>;

class DraftKeeper final : public QObject
{
    Q_OBJECT

  public:
    /// Watches the fields inside `form`, which must outlive this.
    explicit DraftKeeper(QWidget& form, QObject* parent = nullptr);
    ~DraftKeeper() override;

    /// Keeps drafts for this camp from now on and returns the one a window left behind that is gone; empty
    /// when there is none. Empty folder: keeps none.
    DraftFields begin(const QString& campFolder);
    /// Puts a draft into the form.
    void restore(const DraftFields& draft);
    /// The person was served or the form emptied: the draft goes, until something is typed again.
    void settled();
    /// Another draft of the same window and camp, written at once; empty: there is none any more.
    void keepBeside(const QByteArray& bytes);
    [[nodiscard]] QByteArray beside() const;
    /// Writes at once what waits to be written.
    void flush();

    /// Where drafts lie.
    [[nodiscard]] static QString folder();

  private:
    [[nodiscard]] QString pathBeside() const;
    [[nodiscard]] DraftFields fields() const;
    void watchFields();
    void touched();
    void write();
    void forget();

    QWidget& form_;
    QTimer* soon_;
    QString path_; ///< of the draft; empty: none is kept
    std::unique_ptr<QLockFile> lock_;
    DraftFields empty_; ///< the form when nobody typed
    DraftFields kept_;
};

} // namespace quarterstep
