// SPDX-License-Identifier: GPL-3.0-or-later
// Figures told in the help are recomputed: the line as it must stand in a page of app/help.
#pragma once

#include <boost/test/unit_test.hpp>

#include <cstdio>
#include <fstream>
#include <map>
#include <sstream>
#include <string>

namespace quarterstep::testing
{

inline std::string helpPage(const std::string& page)
{
    std::ifstream file(QS_SOURCE_DIR "/app/help/" + page);
    std::ostringstream text;
    text << file.rdbuf();
    return text.str();
}

inline void checkStandsInHelp(const std::string& line, const std::string& page = "matching.md")
{
    static std::map<std::string, std::string> pages;
    const auto& help = pages.try_emplace(page, helpPage(page)).first->second;
    BOOST_TEST((help.find("\n" + line + "\n") != std::string::npos), "this line must stand in app/help/"
                                                                         << page << ":\n"
                                                                         << line);
}

inline std::string fixed(double value, int digits)
{
    char text[32];
    std::snprintf(text, sizeof text, "%.*f", digits, value);
    return text;
}

inline std::string percent(int part, int whole)
{
    return fixed(100.0 * part / whole, 1) + " %";
}

} // namespace quarterstep::testing
