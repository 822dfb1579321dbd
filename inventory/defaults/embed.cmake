# SPDX-License-Identifier: GPL-3.0-or-later
# Writes the bytes of INPUT as a C++ array into OUTPUT, behind the function NAME of default_texts.hpp.
file(READ "${INPUT}" bytes HEX)
string(REGEX REPLACE "(................................)" "\\1\n" bytes "${bytes}")
string(REGEX REPLACE "([0-9a-f][0-9a-f])" "'\\\\x\\1', " bytes "${bytes}")
file(WRITE "${OUTPUT}" "// SPDX-License-Identifier: GPL-3.0-or-later
// Made from a YAML file of inventory/defaults while building.
#include \"inventory/defaults/default_texts.hpp\"

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
