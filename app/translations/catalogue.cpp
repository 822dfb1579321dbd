// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/translations/catalogue.hpp"

#include <QCoreApplication>
#include <QTranslator>

#include <array>

namespace quarterstep
{

std::span<const Language> languagesShipped()
{
    static constexpr std::array languages{
        Language{"en", "English", false, "fonts-dejavu-core"},
        Language{"ar", "العربية", true, "fonts-dejavu-core"},
        Language{"hi", "हिन्दी", false, "fonts-lohit-deva"},
    };
    return languages;
}

std::span<const Language> languagesOfDesk()
{
    static constexpr std::array languages{
        Language{"en", "English", false, "fonts-dejavu-core"},
        Language{"ar", "العربية", true, "fonts-dejavu-core"},
        Language{"es", "Español", false, "fonts-dejavu-core"},
        Language{"fr", "Français", false, "fonts-dejavu-core"},
        Language{"hi", "हिन्दी", false, "fonts-lohit-deva"},
        Language{"pt", "Português", false, "fonts-dejavu-core"},
        Language{"sw", "Kiswahili", false, "fonts-dejavu-core"},
    };
    return languages;
}

const Language* languageNamed(const std::string& code)
{
    for (const auto& language : languagesShipped())
        if (code == language.code)
            return &language;
    return nullptr;
}

SpokenIn::SpokenIn(const Language& language) : translator_(std::make_unique<QTranslator>())
{
    if (translator_->load(QStringLiteral(":/i18n/quarterstep_") + QString::fromUtf8(language.code)))
        QCoreApplication::installTranslator(translator_.get());
}

SpokenIn::~SpokenIn()
{
    QCoreApplication::removeTranslator(translator_.get());
}

} // namespace quarterstep
