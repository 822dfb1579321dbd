// SPDX-License-Identifier: GPL-3.0-or-later
// DICOM is read and written by a program of its own, so that the other verbs start without its library.
#include "app/command/exchange_dicom.hpp"

#include "app/command/command_line.hpp"

#include <QCoreApplication>

#include <cerrno>
#include <cstring>
#include <vector>

#include <unistd.h>

namespace quarterstep
{
namespace
{

constexpr const char* dicomProgram = "quarterstep-dicom";
DicomWays ways;

} // namespace

void exchangeDicomWith(const DicomWays& given)
{
    ways = given;
}

const DicomWays& dicomWays()
{
    if (ways.read != nullptr)
        return ways;
    const auto path =
        (QCoreApplication::applicationDirPath() + QLatin1Char('/') + QString::fromUtf8(dicomProgram))
            .toLocal8Bit();
    std::vector<QByteArray> words;
    for (const auto& argument : QCoreApplication::arguments())
        words.push_back(argument.toLocal8Bit());
    std::vector<char*> arguments;
    for (auto& word : words)
        arguments.push_back(word.data());
    arguments.push_back(nullptr);
    ::execv(path.constData(), arguments.data()); // returns only by an error
    throw errorSaying("dicom-program-missing",
                      {QS_SAY("core", "the program that reads and writes DICOM, %1, cannot be started: %2"),
                       {path.toStdString(), std::strerror(errno)}},
                      Exit::unavailable);
}

} // namespace quarterstep
