// SPDX-License-Identifier: GPL-3.0-or-later
// DICOM is read and written by a program of its own, so that the other verbs start without its library.
#include "app/command/exchange_dicom.hpp"

#include "app/command/command_line.hpp"
#include "app/command/go_on_in.hpp"

namespace quarterstep
{
namespace
{

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
    const auto failed = goOnIn("quarterstep-dicom");
    throw errorSaying("dicom-program-missing",
                      {QS_SAY("core", "the program that reads and writes DICOM, %1, cannot be started: %2"),
                       {failed.path, failed.why}},
                      Exit::unavailable);
}

} // namespace quarterstep
