# SPDX-License-Identifier: GPL-3.0-or-later
# Runs the generator into an empty folder and compares bytes with the files kept.
file(REMOVE_RECURSE ${FRESH})
file(MAKE_DIRECTORY ${FRESH})
execute_process(COMMAND ${PROGRAM} ${FRESH} RESULT_VARIABLE status)
if(NOT status EQUAL 0)
    message(FATAL_ERROR "the generator ended with ${status}")
endif()
foreach(name stock.yaml people.csv supplier.yaml)
    execute_process(COMMAND ${CMAKE_COMMAND} -E compare_files ${FRESH}/${name} ${KEPT}/${name} RESULT_VARIABLE differs)
    if(NOT differs EQUAL 0)
        message(FATAL_ERROR "${KEPT}/${name} is not what the generator writes; run it and commit, or change it back")
    endif()
endforeach()
