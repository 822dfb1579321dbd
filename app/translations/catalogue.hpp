// SPDX-License-Identifier: GPL-3.0-or-later
// The languages that are compiled in, and speaking one of them for a while.
#pragma once

#include <memory>
#include <span>
#include <string>

class QTranslator;

namespace quarterstep
{

struct Language {
    const char* code; ///< "ar"
    const char* name; ///< as its speakers write it
    bool rightToLeft;
    const char* fontPackage; ///< Debian package with a font for it
};

/// Those of papers, English first.
[[nodiscard]] std::span<const Language> languagesShipped();
/// Those of the window, English first: more than those of papers.
[[nodiscard]] std::span<const Language> languagesOfDesk();
/// Null when the code is none of them.
[[nodiscard]] const Language* languageNamed(const std::string& code);

/// While one lives, every sentence comes from the catalogue of that language.
class SpokenIn
{
  public:
    explicit SpokenIn(const Language& language);
    SpokenIn(const SpokenIn&) = delete;
    SpokenIn& operator=(const SpokenIn&) = delete;
    ~SpokenIn();

  private:
    std::unique_ptr<QTranslator> translator_;
};

} // namespace quarterstep
