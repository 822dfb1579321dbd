// SPDX-License-Identifier: GPL-3.0-or-later
namespace quarterstep::bench
{
class Plan;
void planServer(Plan& plan);
void planServer(Plan& /*plan*/) {}
} // namespace quarterstep::bench
