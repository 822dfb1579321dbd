// SPDX-License-Identifier: GPL-3.0-or-later
// An order read back.
#include "core/fitting/words.hpp"
#include "inventory/exchange/order_file.hpp"
#include "inventory/text/source_text.hpp"

#include <algorithm>
#include <cmath>

namespace quarterstep
{

namespace
{

constexpr std::size_t longestLabel = 8;
constexpr double mostDioptres = 40.0;
constexpr double mostMillimetres = 4000.0;
constexpr double wholeTurn = 360.0;

struct Record {
    std::string value;
    Position place; ///< of the value
};

class OrderReader
{
  public:
    OrderReader(const std::string& bytes, const std::string& name) : bytes_(bytes), name_(name) {}

    Reading<OrderFile> read()
    {
        for (std::size_t begin = 0; begin < bytes_.size();)
            begin = takeLine(begin);
        if (reading_.usable())
            fill();
        sortByPlace(reading_.findings);
        return std::move(reading_);
    }

  private:
    void tell(Severity severity, Position place, const char* code, Sentence sentence)
    {
        reading_.findings.push_back({severity, std::move(place), code, std::move(sentence)});
    }

    /// One record; the offset behind it.
    std::size_t takeLine(std::size_t begin)
    {
        ++line_;
        const auto newline = bytes_.find('\n', begin);
        const auto end = newline == std::string::npos ? bytes_.size() : newline;
        auto text = bytes_.substr(begin, end - begin);
        if (newline == std::string::npos || text.empty() || text.back() != '\r')
            tell(Severity::error, {name_, line_, static_cast<int>(text.size()) + 1}, "order-line-end",
                 {QS_SAY("core", "a record ends with CR LF; this one does not"), {}});
        else
            text.pop_back();
        const auto odd = std::find_if(text.begin(), text.end(), [](char c) { return c < ' ' || c > '~'; });
        if (odd != text.end())
            tell(Severity::error, {name_, line_, static_cast<int>(odd - text.begin()) + 1}, "order-ascii",
                 {QS_SAY("core", "a character here is not plain ASCII"), {}});
        else if (!text.empty())
            takeRecord(text);
        return end + 1;
    }

    void takeRecord(const std::string& text)
    {
        const auto equals = text.find('=');
        if (equals == std::string::npos) {
            tell(Severity::error, {name_, line_, 1}, "order-line",
                 {QS_SAY("core", "\"%1\" is no record; write LABEL=value"), {shown(text)}});
            return;
        }
        const auto label = text.substr(0, equals);
        const bool well = !label.empty() && label.size() <= longestLabel + 1 &&
                          std::all_of(label.begin(), label.end(), [](char c) {
                              return (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '_';
                          });
        if (!well)
            tell(Severity::error, {name_, line_, 1}, "order-label",
                 {QS_SAY("core", "\"%1\" is no label: capitals and digits, at most 8"), {shown(label)}});
        const auto& known = orderLabels();
        if (well &&
            std::none_of(known.begin(), known.end(), [&](const auto& each) { return label == each.label; }))
            tell(Severity::note, {name_, line_, 1}, "order-label-unknown",
                 {QS_SAY("core", "the record %1 is passed over"), {label}});
        const bool isNew =
            records_
                .emplace(label, Record{text.substr(equals + 1), {name_, line_, static_cast<int>(equals) + 2}})
                .second;
        if (!isNew)
            tell(Severity::error, {name_, line_, 1}, "order-label-twice",
                 {QS_SAY("core", "the record %1 stands twice"), {shown(label)}});
    }

    [[nodiscard]] std::string textOf(const std::string& label) const
    {
        const auto found = records_.find(label);
        return found == records_.end() || found->second.value == "?" ? std::string() : found->second.value;
    }

    void refuse(const Record& record, const std::string& text)
    {
        tell(Severity::error, record.place, "order-value",
             {QS_SAY("core", "\"%1\" is not what belongs here"), {shown(text)}});
    }

    std::optional<double> number(const Record& record, std::string text, double most)
    {
        if (text.empty() || text == "?")
            return std::nullopt;
        if (text.front() == '+')
            text.erase(0, 1);
        const auto read = machineNumber(text, most, true);
        if (!read) {
            refuse(record, text);
            return std::nullopt;
        }
        return read.value();
    }

    PerEye<std::optional<double>> numbers(const std::string& label, double most)
    {
        const auto found = records_.find(label);
        if (found == records_.end())
            return {};
        const auto& [value, place] = found->second;
        const auto parted = value.find(';');
        if (parted == std::string::npos || value.find(';', parted + 1) != std::string::npos) {
            refuse(found->second, value);
            return {};
        }
        return {number(found->second, value.substr(0, parted), most),
                number(found->second, value.substr(parted + 1), most)};
    }

    std::optional<double> oneNumber(const std::string& label, double most)
    {
        const auto found = records_.find(label);
        return found == records_.end() ? std::nullopt : number(found->second, found->second.value, most);
    }

    void fill()
    {
        auto& file = reading_.value;
        file.job = textOf("JOB");
        if (textOf("DO") != "B")
            tell(Severity::error, {name_, 1, 1}, "order-value",
                 {QS_SAY("core", "DO is \"%1\"; a pair, B, is wanted"), {shown(textOf("DO"))}});
        file.order.person = textOf("CLIENT");
        fillPurpose(file.order);
        fillPowers(file.order);
        fillCentration(file.order);
        file.frame.lens = numbers("HBOX", mostMillimetres).right.value_or(0.0);
        file.frame.height = numbers("VBOX", mostMillimetres).right.value_or(0.0);
        file.frame.bridge = oneNumber("DBL", mostMillimetres).value_or(0.0);
        file.order.vertexMm = numbers("BVD", mostMillimetres).right;
        file.order.workingMm = oneNumber("_WORKMM", mostMillimetres);
        file.order.writtenOn = textOf("_RXDATE");
        file.order.frame = textOf("_FRAME");
        file.order.frameSize = textOf("_SIZE");
        file.rules.hash = textOf("_RULES");
        const auto profile = textOf("_PROFILE");
        const auto blank = profile.rfind(' ');
        file.rules.profile = profile.substr(0, blank);
        file.rules.version = blank == std::string::npos ? std::string() : profile.substr(blank + 1);
    }

    void fillPurpose(LaboratoryOrder& order)
    {
        const auto word = textOf("_PURPOSE");
        const auto kinds = textOf("LTYPE");
        order.purpose = kinds == "BI;BI" ? Purpose::bifocal : Purpose::distance;
        for (const auto purpose : {Purpose::distance, Purpose::near, Purpose::intermediate, Purpose::bifocal})
            if (word == wordOf(purpose))
                order.purpose = purpose;
        if (!kinds.empty() && kinds != "SV;SV" && kinds != "BI;BI")
            refuse(records_.at("LTYPE"), kinds);
    }

    void fillPowers(LaboratoryOrder& order)
    {
        const auto sphere = numbers("SPH", mostDioptres);
        const auto cylinder = numbers("CYL", mostDioptres);
        const auto axis = numbers("AX", wholeTurn / 2.0);
        const auto addition = numbers("ADD", mostDioptres);
        const auto amount = numbers("PRVM", mostDioptres);
        const auto base = numbers("PRVA", wholeTurn);
        for (const Eye eye : bothEyes) {
            auto& lens = order.lenses.of(eye);
            lens.power.sphere = Dioptres{sphere.of(eye).value_or(0.0)};
            lens.power.cylinder = Dioptres{cylinder.of(eye).value_or(0.0)};
            if (lens.power.cylinder != Dioptres{} && !axis.of(eye))
                tell(Severity::error, records_.at("CYL").place, "axis-missing",
                     {QS_SAY("core", "cylinder %1 has no axis; write it with its axis, as %1 x 90"),
                      {decimalText(lens.power.cylinder.value())}});
            if (lens.power.cylinder != Dioptres{} && axis.of(eye))
                lens.power.axis = AxisDegrees{*axis.of(eye) <= 0.0 ? wholeTurn / 2.0 : *axis.of(eye)};
            if (addition.of(eye))
                lens.addition = Dioptres{*addition.of(eye)};
            const auto prism = prismFromBase(amount.of(eye).value_or(0.0), base.of(eye).value_or(0.0), eye);
            lens.prism = {std::round(prism.in * 1000.0) / 1000.0 + 0.0,
                          std::round(prism.up * 1000.0) / 1000.0 + 0.0};
            lens.followsFellow = textOf("_FELLOW") == (eye == Eye::right ? "R" : "L");
        }
        if (records_.count("SPH") == 0)
            tell(Severity::error, {name_, 1, 1}, "order-line",
                 {QS_SAY("core", "the record SPH is missing"), {}});
    }

    void fillCentration(LaboratoryOrder& order)
    {
        const bool near = order.purpose == Purpose::near || order.purpose == Purpose::intermediate;
        const auto centration = numbers(near ? "NPD" : "IPD", mostMillimetres);
        const auto height = numbers(order.purpose == Purpose::bifocal ? "SEGHT" : "OCHT", mostMillimetres);
        for (const Eye eye : bothEyes) {
            order.lenses.of(eye).centration = centration.of(eye);
            order.lenses.of(eye).height = height.of(eye);
        }
    }

    const std::string& bytes_;
    std::string name_;
    int line_ = 0;
    std::map<std::string, Record> records_;
    Reading<OrderFile> reading_;
};

} // namespace

Reading<OrderFile> readOrderFile(const std::string& bytes, const std::string& name)
{
    return OrderReader(bytes, name).read();
}

} // namespace quarterstep
