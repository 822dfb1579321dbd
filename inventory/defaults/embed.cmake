# SPDX-License-Identifier: GPL-3.0-or-later
# Writes the bytes of INPUT as a C++ array into OUTPUT, behind the function NAME of HEADER (default_texts.hpp).
if(NOT HEADER)
    set(HEADER inventory/defaults/default_texts.hpp)
endif()
file(READ "${INPUT}" bytes HEX)
string(REGEX REPLACE "(................................)" "\\1\n" bytes "${bytes}")
string(REGEX REPLACE "([0-9a-f][0-9a-f])" "'\\\\x\\1', " bytes "${bytes}")
file(WRITE "${OUTPUT}" "// SPDX-License-Identifier: GPL-3.0-or-later
// Made from a file of the project while building.
#include \"${HEADER}\"

namespace quarterstep
{

std::string_view ${NAME}()
{
    static constexpr char bytes[] = {
${bytes}};
    return {bytes, sizeof bytes};
}

} // namespace quarterstep
")
