// SPDX-License-Identifier: GPL-3.0-or-later
// What people are told when the database fails.
#include "inventory/store/connection.hpp"

namespace quarterstep
{

namespace
{

Error aboutFile(const std::string& path, const StoreFailure& failure)
{
    switch (failure.kind) {
    case FailureKind::unwritable:
        return errorAt(path, "ledger-unwritable",
                       {QS_SAY("core", "the ledger cannot be opened for writing here; check the rights of "
                                       "the file and its folder"),
                        {}},
                       4);
    case FailureKind::full:
        return errorAt(path, "ledger-full",
                       {QS_SAY("core", "the disk is full; nothing was written; make room and repeat"), {}},
                       4);
    case FailureKind::damaged:
        return errorAt(path, "ledger-not-a-database",
                       {QS_SAY("core", "this is not a ledger, or it is damaged (%1); put back the latest "
                                       "copy of the camp folder"),
                        {failure.text}},
                       3);
    default:
        return errorAt(path, "ledger-failed",
                       {QS_SAY("core", "the ledger failed: %1 (code %2); nothing was written"),
                        {failure.text, failure.code}},
                       4);
    }
}

Error aboutOthers(const std::string& path, const StoreFailure& failure)
{
    switch (failure.kind) {
    case FailureKind::busy:
    case FailureKind::conflict:
        return errorAt(path, "ledger-locked",
                       {QS_SAY("core", "another program holds the ledger; nothing was written; close it "
                                       "there and repeat"),
                        {}},
                       4);
    case FailureKind::unreachable:
        return errorAt(
            path, "ledger-unreachable",
            {QS_SAY("core", "the shared ledger cannot be reached (%1); nothing was written; check the "
                            "network and the server, then repeat"),
             {failure.text}},
            4);
    case FailureKind::lost:
        return errorAt(
            path, "ledger-unreachable",
            {QS_SAY("core", "the connection to the shared ledger was lost (%1); nothing was written; "
                            "check the network and the server, then repeat"),
             {failure.text}},
            4);
    case FailureKind::refused:
        return errorAt(
            path, "ledger-not-allowed",
            {QS_SAY("core", "the shared ledger does not allow this login to do that (%1); nothing was "
                            "written; ask the keeper"),
             {failure.text}},
            4);
    default:
        return aboutFile(path, failure);
    }
}

} // namespace

StoreError storeError(const std::string& path, const StoreFailure& failure)
{
    return {aboutOthers(path, failure), failure.kind};
}

} // namespace quarterstep
