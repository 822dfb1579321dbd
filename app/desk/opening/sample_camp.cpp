// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/opening/sample_camp.hpp"

#include "inventory/store/write_back.hpp"
#include "inventory/text/camp_settings.hpp"

#include <QDir>
#include <QFile>
#include <QStandardPaths>

namespace quarterstep
{

namespace
{
QByteArray bytesOf(const char* name)
{
    QFile file(QStringLiteral(":/sample/") + QLatin1String(name));
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

void writeInto(const QDir& folder, const char* name, const QByteArray& bytes)
{
    replaceFile(folder.filePath(QLatin1String(name)).toStdString(), bytes.toStdString());
}

QByteArray markedStock()
{
    auto stock = bytesOf("stock.yaml");
    return stock.replace("\nsite: ", "\nsite: SAMPLE · ");
}
} // namespace

QString sampleFolder()
{
    return QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation) +
           QStringLiteral("/quarterstep/sample camp");
}

void makeSampleCamp()
{
    const QDir folder(sampleFolder());
    if (QFile::exists(folder.filePath(QStringLiteral("stock.yaml"))))
        return;
    if (!folder.mkpath(QStringLiteral(".")))
        throw errorSaying("file-unwritable",
                          {QS_SAY("core", "the folder %1 for the sample cannot be made; check rights and "
                                          "free space"),
                           {folder.path().toStdString()}},
                          4);
    CampSettings settings;
    settings.sample = true;
    writeInto(folder, "desk.yaml", QByteArray::fromStdString(writeCampSettings(settings)));
    writeInto(folder, "rules.yaml", bytesOf("rules.yaml"));
    writeInto(folder, "people.csv", bytesOf("people.csv"));
    writeInto(folder, "stock.yaml", markedStock()); // last: with it the folder is a camp
}

void renewSampleCamp()
{
    QDir folder(sampleFolder());
    if (readCampSettings(folder.path().toStdString()).value.sample)
        for (const auto* name : {"stock.yaml", "ledger.sqlite", "ledger.sqlite-wal", "ledger.sqlite-shm"})
            folder.remove(QLatin1String(name));
    makeSampleCamp();
}

} // namespace quarterstep
