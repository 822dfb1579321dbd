// SPDX-License-Identifier: GPL-3.0-or-later
// JSON of single changes and of the order for the laboratory.
#include "app/command/answers.hpp"
#include "app/command/output.hpp"
#include "app/session/wording.hpp"

namespace quarterstep
{
namespace
{

const char* wordOf(EyeState state)
{
    constexpr const char* words[] = {"measured", "balance", "artificial", "blind", "not measured"};
    return words[static_cast<std::size_t>(state)];
}

const char* wordOf(CylinderForm form)
{
    constexpr const char* words[] = {"minus", "plus", "as-written"};
    return words[static_cast<std::size_t>(form)];
}

const char* wordOf(ChangeKind kind)
{
    constexpr const char* words[] = {"typed_acuity", "record_vertex", "measure_pd",   "prescriber_allows",
                                     "centres",      "heights",       "sphere",       "one_sphere",
                                     "addition",     "own_lenses",    "made_to_order"};
    return words[static_cast<std::size_t>(kind)];
}

QJsonValue jsonAddition(const std::optional<Dioptres>& addition)
{
    return addition ? jsonNumber(addition->value()) : QJsonValue(QJsonValue::Null);
}

QJsonObject jsonLens(const OrderedLens& lens, Eye eye)
{
    const bool cylinder = lens.power.cylinder != Dioptres{};
    const bool made = lens.state == EyeState::measured || lens.followsFellow;
    const auto base = baseOf(lens.prism, eye);
    QJsonObject object{
        {"eye", wordOf(lens.state)},
        {"follows_fellow", lens.followsFellow},
        {"sphere", made ? jsonNumber(lens.power.sphere.value()) : QJsonValue(QJsonValue::Null)},
        {"cylinder", made ? jsonNumber(lens.power.cylinder.value()) : QJsonValue(QJsonValue::Null)},
        {"axis", made && cylinder ? jsonNumber(lens.power.axis.value()) : QJsonValue(QJsonValue::Null)},
        {"addition", jsonAddition(lens.addition)},
        {"prism", jsonNumber(base.amount)},
        {"base", base.amount > 0.0 ? jsonNumber(base.degrees) : QJsonValue(QJsonValue::Null)},
        {"pd_mm", jsonNumber(lens.centration)},
        {"pd_is_half", lens.centrationHalved},
        {"height_mm", jsonNumber(lens.height)}};
    return object;
}

QJsonArray sentences(const std::vector<Sentence>& list)
{
    QJsonArray array;
    for (const auto& sentence : list)
        array.append(say(sentence));
    return array;
}

} // namespace

QJsonValue jsonChange(const std::optional<SingleChange>& change)
{
    if (!change)
        return QJsonValue::Null;
    return QJsonObject{
        {"change", wordOf(change->kind)}, {"text", say(change->sentence)}, {"on_trial", change->onTrial}};
}

QJsonObject jsonOrder(const LaboratoryOrder& order)
{
    return {{"person", jsonText(order.person)},
            {"purpose", jsonWord(order.purpose)},
            {"form", wordOf(order.form)},
            {"right", jsonLens(order.lenses.right, Eye::right)},
            {"left", jsonLens(order.lenses.left, Eye::left)},
            {"vertex_mm", jsonNumber(order.vertexMm)},
            {"working_mm", jsonNumber(order.workingMm)},
            {"frame", jsonTextOrNull(order.frame)},
            {"frame_size", jsonTextOrNull(order.frameSize)},
            {"prescriber", jsonTextOrNull(order.prescriber)},
            {"written_on", jsonTextOrNull(order.writtenOn)},
            {"notes", sentences(order.notes)},
            {"missing", sentences(order.missing)}};
}

} // namespace quarterstep
