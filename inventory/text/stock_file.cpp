// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/text/stock_file.hpp"
#include "inventory/text/rules_file.hpp"
#include "inventory/text/prescription_table.hpp"
