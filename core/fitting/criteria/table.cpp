// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/fitting/criteria/table.hpp"
