# SPDX-License-Identifier: GPL-3.0-or-later
# Catalogues of every sentence people see. `translations_update` collects new sentences into the .ts files;
# the compiled ones are embedded into the desk under :/i18n.
set(QUARTERSTEP_TS ${CMAKE_SOURCE_DIR}/app/translations/quarterstep_ar.ts)
set(QUARTERSTEP_QM ${CMAKE_CURRENT_BINARY_DIR}/quarterstep_ar.qm)

add_custom_command(OUTPUT ${QUARTERSTEP_QM}
    COMMAND Qt6::lrelease -silent -nounfinished ${QUARTERSTEP_TS} -qm ${QUARTERSTEP_QM}
    DEPENDS ${QUARTERSTEP_TS}
    VERBATIM)
add_custom_target(translations ALL DEPENDS ${QUARTERSTEP_QM})

add_custom_target(translations_update
    COMMAND Qt6::lupdate -tr-function-alias QT_TRANSLATE_NOOP+=QS_SAY -I ${CMAKE_SOURCE_DIR} -no-obsolete
            -locations none -source-language en ${CMAKE_SOURCE_DIR}/app ${CMAKE_SOURCE_DIR}/core
            ${CMAKE_SOURCE_DIR}/inventory -ts ${QUARTERSTEP_TS}
    VERBATIM)

qt_add_resources(quarterstep-desk quarterstep_translations PREFIX /i18n BASE ${CMAKE_CURRENT_BINARY_DIR}
                 FILES ${QUARTERSTEP_QM})
add_dependencies(quarterstep-desk translations)
