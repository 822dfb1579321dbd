// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/wording.hpp"
#include "app/session/camp.hpp"
#include "app/session/coverage.hpp"
#include "app/session/hand_over.hpp"
