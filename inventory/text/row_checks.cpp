// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/text/row_checks.hpp"

#include "core/optics/near_addition.hpp"
#include "inventory/text/numbers.hpp"
#include "inventory/text/table_dates.hpp"

#include <cmath>

namespace quarterstep
{

namespace
{

constexpr double monocularLooking = 40.0; ///< mm
constexpr double sumMayDiffer = 1.0;      ///< mm
constexpr double nearMayDiffer = 0.25;    ///< D
constexpr double rounding = 1e-9;
constexpr long eighth = 125;     ///< thousandths of a dioptre
constexpr double leastAge = 2.0; ///< years; younger people are not refracted in a camp (common practice)
constexpr double mostAge = 105.0;

class RowCheck
{
  public:
    RowCheck(const PersonRecord& record, const CellsByName& cells, std::vector<Finding>& findings)
        : record_(record), cells_(cells), findings_(findings)
    {
    }

    void tell(Severity severity, const char* column, const char* code, Sentence sentence)
    {
        const auto cell = cells_.find(column);
        findings_.push_back({severity, cell == cells_.end() ? record_.position : cell->second.place, code,
                             std::move(sentence)});
    }

    [[nodiscard]] bool empty(const char* column) const
    {
        const auto cell = cells_.find(column);
        return cell == cells_.end() || cell->second.text.empty();
    }

    void checkNeeded()
    {
        if (empty("person"))
            tell(Severity::error, "person", "person-empty",
                 {QS_SAY("core", "the row has no person; write a code or a name"), {}});
        for (const char* side : {"right", "left"})
            if (empty(side))
                tell(
                    Severity::error, side, "empty-eye",
                    {QS_SAY("core",
                            "nothing is written for this eye; write its power, or balance, artificial, blind "
                            "or not measured"),
                     {}});
    }

    /// 3 and 5, 2 and 7 are easily taken for one another in handwriting; a value between the steps shows it.
    void checkSteps()
    {
        for (const Eye eye : bothEyes) {
            const auto& final = record_.eyes.of(eye).final;
            if (final.state != EyeState::measured)
                continue;
            for (const Dioptres value : {final.power.sphere, final.power.cylinder})
                if (value.thousandths() % eighth != 0)
                    tell(Severity::caution, eye == Eye::right ? "right" : "left", "power-off-step",
                         {QS_SAY("core", "%1 is no step of 0.25 or 0.125 D; look at the writing again (3 and "
                                         "5, 2 and 7 are alike)"),
                          {writeDioptres(value)}});
        }
    }

    void checkForms()
    {
        const auto cylinder = [&](Eye eye) {
            const auto& final = record_.eyes.of(eye).final;
            return final.state == EyeState::measured ? final.power.cylinder.thousandths() : 0;
        };
        if ((cylinder(Eye::right) < 0 && cylinder(Eye::left) > 0) ||
            (cylinder(Eye::right) > 0 && cylinder(Eye::left) < 0))
            tell(Severity::caution, "left", "cylinder-forms-mixed",
                 {QS_SAY("core", "one eye is written with a minus cylinder, the other with a plus cylinder; "
                                 "both are read as written: is that meant?"),
                  {}});
    }

    /// Distance and near written out in full, without an addition.
    void checkNearWrittenOut()
    {
        for (const Eye eye : bothEyes) {
            const EyeRecord& one = record_.eyes.of(eye);
            if (!one.nearPower || one.addition || one.final.addition || !one.seeing())
                continue;
            const auto addition = additionBetween(one.final.power, *one.nearPower);
            if (!addition && addition.complaint().code == "near-weaker")
                tell(Severity::caution, eye == Eye::right ? "near_right" : "near_left", "near-weaker",
                     addition.complaint().sentence);
        }
    }

    void checkAge()
    {
        if (record_.age && (*record_.age < leastAge || *record_.age > mostAge))
            tell(Severity::caution, "age", "age-implausible",
                 {QS_SAY("core", "age %1: is it right? Whether the rules for children count hangs on it"),
                  {writeNumber(*record_.age)}});
    }

    void checkDistances()
    {
        for (const auto& [column, pd] :
             {std::pair{"pd_mm", record_.distancePd}, {"near_pd_mm", record_.nearPd}})
            if (pd && *pd <= monocularLooking)
                tell(Severity::caution, column, "pd-monocular",
                     {QS_SAY("core",
                             "%1 mm is narrow for both eyes together; is it monocular? Then it goes into "
                             "pd_right_mm or pd_left_mm"),
                      {writeNumber(*pd)}});
        const auto& right = record_.eyes.right.monocularPd;
        const auto& left = record_.eyes.left.monocularPd;
        if (record_.distancePd && right && left &&
            std::abs(*right + *left - *record_.distancePd) > sumMayDiffer + rounding)
            tell(Severity::caution, "pd_mm", "pd-sum",
                 {QS_SAY("core",
                         "the two monocular distances make %1 mm, not %2; the monocular ones are used"),
                  {writeNumber(std::round((*right + *left) * 100.0) / 100.0),
                   writeNumber(*record_.distancePd)}});
        if (record_.distancePd && record_.nearPd && *record_.nearPd > *record_.distancePd + rounding)
            tell(Severity::caution, "near_pd_mm", "near-pd-wider",
                 {QS_SAY("core",
                         "the near distance %1 mm is wider than the far one, %2 mm; were they exchanged?"),
                  {writeNumber(*record_.nearPd), writeNumber(*record_.distancePd)}});
    }

    void checkAdditions()
    {
        for (const Eye eye : bothEyes) {
            const bool right = eye == Eye::right;
            const EyeRecord& one = record_.eyes.of(eye);
            const char* column = right ? "add_right" : "add_left";
            const char* addition = empty(column) ? "add" : column;
            if (one.final.addition && one.addition && !(*one.final.addition == *one.addition))
                tell(Severity::error, addition, "addition-twice",
                     {QS_SAY("core", "the eye's text says addition %1, this column %2; keep one"),
                      {writeDioptres(*one.final.addition), writeDioptres(*one.addition)}});
            if (!one.nearPower || !one.addition || !one.seeing())
                continue;
            const Dioptres near = meanSphere(withSphereAdded(one.final.power, *one.addition));
            const Dioptres tried = meanSphere(*one.nearPower);
            if (std::abs((tried - near).value()) > nearMayDiffer + rounding)
                tell(Severity::caution, right ? "near_right" : "near_left", "near-and-addition",
                     {QS_SAY("core",
                             "sphere and addition make %1 at near, the near power says %2; the near power is "
                             "used"),
                      {writeDioptres(near), writeDioptres(tried)}});
        }
    }

  private:
    const PersonRecord& record_;
    const CellsByName& cells_;
    std::vector<Finding>& findings_;
};

} // namespace

void checkRecord(const PersonRecord& record, const CellsByName& cells, std::vector<Finding>& findings)
{
    RowCheck check(record, cells, findings);
    check.checkNeeded();
    check.checkSteps();
    check.checkForms();
    check.checkNearWrittenOut();
    check.checkAge();
    check.checkDistances();
    check.checkAdditions();
}

void setMonths(PersonRecord& record, const CellsByName& cells, const std::string& today,
               std::vector<Finding>& findings)
{
    const auto written = parseIsoDate(record.writtenOn);
    const auto now = parseIsoDate(today);
    if (!written || !now)
        return;
    if (*now < *written) {
        RowCheck(record, cells, findings)
            .tell(
                Severity::error, "written_on", "date-future",
                {QS_SAY("core", "the date %1 lies after today, %2; correct it"), {record.writtenOn, today}});
        return;
    }
    record.monthsSinceWritten = monthsBetween(*written, *now);
}

} // namespace quarterstep
