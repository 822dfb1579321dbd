// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/store/ledger.hpp"
#include "inventory/store/write_back.hpp"
