// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/shell/draft_keeper.hpp"

#include "inventory/store/write_back.hpp"

#include <QCheckBox>
#include <QComboBox>
#include <QCryptographicHash>
#include <QDir>
#include <QFile>
#include <QJsonDocument>
#include <QJsonObject>
#include <QLineEdit>
#include <QLockFile>
#include <QPlainTextEdit>
#include <QStandardPaths>
#include <QTimer>

namespace quarterstep
{

namespace
{
constexpr int writeAfterMs = 250; ///< at most this is lost
constexpr int mostWindows = 9;    ///< of one camp at a time that keep drafts
constexpr auto draftFormat = "quarterstep draft 1";

QByteArray bytesOfDraft(const DraftFields& fields)
{
    QJsonObject values;
    for (auto field = fields.begin(); field != fields.end(); ++field)
        values.insert(field.key(), field.value());
    return QJsonDocument(QJsonObject{{QStringLiteral("format"), QLatin1String(draftFormat)},
                                     {QStringLiteral("fields"), values}})
        .toJson();
}

/// Nothing when the bytes are no draft: a draft that cannot be read is worth less than a fresh form.
DraftFields draftOf(const QString& path)
{
    QFile file(path);
    DraftFields fields;
    if (!file.open(QIODevice::ReadOnly))
        return fields;
    const auto root = QJsonDocument::fromJson(file.readAll()).object();
    if (root.value(QStringLiteral("format")).toString() != QLatin1String(draftFormat))
        return fields;
    const auto values = root.value(QStringLiteral("fields")).toObject();
    for (auto value = values.begin(); value != values.end(); ++value)
        fields.insert(value.key(), value.value().toString());
    return fields;
}
} // namespace

DraftKeeper::DraftKeeper(QWidget& form, QObject* parent)
    : QObject(parent), form_(form), soon_(new QTimer(this))
{
    soon_->setSingleShot(true);
    soon_->setInterval(writeAfterMs);
    connect(soon_, &QTimer::timeout, this, &DraftKeeper::write);
    watchFields();
    empty_ = fields();
}

DraftKeeper::~DraftKeeper()
{
    flush();
}

QString DraftKeeper::folder()
{
    return QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation) +
           QStringLiteral("/quarterstep/drafts");
}

/// Only what a person does counts: a form that the program fills is no draft.
void DraftKeeper::watchFields()
{
    for (auto* edit : form_.findChildren<QLineEdit*>())
        connect(edit, &QLineEdit::textEdited, this, &DraftKeeper::touched);
    for (auto* box : form_.findChildren<QComboBox*>())
        connect(box, &QComboBox::activated, this, &DraftKeeper::touched);
    for (auto* box : form_.findChildren<QCheckBox*>())
        connect(box, &QCheckBox::clicked, this, &DraftKeeper::touched);
}

DraftFields DraftKeeper::fields() const
{
    DraftFields fields;
    for (const auto* edit : form_.findChildren<QLineEdit*>())
        if (!edit->objectName().isEmpty())
            fields.insert(edit->objectName(), edit->text());
    for (const auto* box : form_.findChildren<QComboBox*>())
        fields.insert(box->objectName(), QString::number(box->currentIndex()));
    for (const auto* box : form_.findChildren<QCheckBox*>())
        fields.insert(box->objectName(), box->isChecked() ? QStringLiteral("1") : QStringLiteral("0"));
    return fields;
}

DraftFields DraftKeeper::begin(const QString& campFolder)
{
    flush();
    path_.clear();
    lock_.reset();
    kept_.clear();
    if (campFolder.isEmpty() || !QDir().mkpath(folder()))
        return {};
    QFile::setPermissions(folder(), QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner);
    const auto camp =
        QCryptographicHash::hash(QDir(campFolder).absolutePath().toUtf8(), QCryptographicHash::Sha256)
            .toHex()
            .left(16);
    for (int window = 1; window <= mostWindows && path_.isEmpty(); ++window) {
        const auto path = folder() + QStringLiteral("/%1-%2").arg(QString::fromLatin1(camp)).arg(window);
        auto lock = std::make_unique<QLockFile>(path + QStringLiteral(".lock"));
        lock->setStaleLockTime(0); // it belongs to a process: one that is gone holds nothing
        if (!lock->tryLock(0))
            continue;
        lock_ = std::move(lock);
        path_ = path + QStringLiteral(".json");
    }
    return draftOf(path_);
}

void DraftKeeper::restore(const DraftFields& draft)
{
    for (auto* edit : form_.findChildren<QLineEdit*>())
        if (const auto text = draft.find(edit->objectName()); text != draft.end() && *text != edit->text()) {
            edit->setText(*text);
            Q_EMIT edit->textEdited(*text);
        }
    for (auto* box : form_.findChildren<QComboBox*>())
        if (const auto at = draft.find(box->objectName()); at != draft.end() && at->toInt() < box->count())
            box->setCurrentIndex(at->toInt());
    for (auto* box : form_.findChildren<QCheckBox*>())
        if (const auto ticked = draft.find(box->objectName()); ticked != draft.end())
            box->setChecked(*ticked == QLatin1String("1"));
}

void DraftKeeper::touched()
{
    if (!path_.isEmpty() && !soon_->isActive())
        soon_->start();
}

void DraftKeeper::flush()
{
    if (soon_->isActive())
        write();
}

void DraftKeeper::write()
{
    soon_->stop();
    const auto now = fields();
    if (path_.isEmpty() || now == kept_)
        return;
    if (now == empty_)
        return forget();
    try {
        replaceFile(path_.toStdString(), bytesOfDraft(now).toStdString(), true);
        kept_ = now;
    } catch (const Error&) { // no place for a draft: the form itself is still there
    }
}

void DraftKeeper::settled()
{
    soon_->stop();
    forget();
}

QString DraftKeeper::pathBeside() const
{
    return path_.chopped(QStringLiteral(".json").size()) + QStringLiteral(".line");
}

void DraftKeeper::keepBeside(const QByteArray& bytes)
{
    if (path_.isEmpty())
        return;
    if (bytes.isEmpty()) {
        QFile::remove(pathBeside());
        return;
    }
    try {
        replaceFile(pathBeside().toStdString(), bytes.toStdString(), true);
    } catch (const Error&) { // no place for a draft: the line itself is still there
    }
}

QByteArray DraftKeeper::beside() const
{
    QFile file(pathBeside());
    return !path_.isEmpty() && file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

void DraftKeeper::forget()
{
    kept_.clear();
    if (!path_.isEmpty())
        QFile::remove(path_);
}

} // namespace quarterstep
