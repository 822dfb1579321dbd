// SPDX-License-Identifier: GPL-3.0-or-later
// An order written.
#include "core/fitting/words.hpp"
#include "inventory/exchange/order_file.hpp"
#include "inventory/text/numbers.hpp"
#include "inventory/text/source_text.hpp"

#include <algorithm>
#include <cmath>

namespace quarterstep
{

namespace
{

constexpr std::size_t longestText = 80;

SpheroCylinder inFormOf(const SpheroCylinder& power, CylinderForm form)
{
    return form == CylinderForm::plus ? plusCylinderForm(power) : minusCylinderForm(power);
}

bool printable(char c)
{
    return c >= ' ' && c <= '~' && c != ';' && c != '=' && c != ',' && c != '?';
}

/// A prism with as few decimals as bring each component back to its thousandth.
struct PrismWords {
    std::string amount;
    std::string base;
};

PrismWords prismWordsOf(const EyePrism& prism, Eye eye)
{
    const auto exact = baseOf(prism, eye);
    for (const auto& [amountStep, baseStep] :
         {std::pair{100.0, 1.0}, {100.0, 10.0}, {1000.0, 100.0}, {10000.0, 1000.0}}) {
        const double amount = std::round(exact.amount * amountStep) / amountStep;
        const double degrees = std::round(exact.degrees * baseStep) / baseStep;
        const auto back = prismFromBase(amount, degrees, eye);
        if ((PrismDioptres{back.in} == PrismDioptres{prism.in} &&
             PrismDioptres{back.up} == PrismDioptres{prism.up}) ||
            amountStep == 10000.0)
            return {decimalText(amount), writeNumber(degrees)};
    }
    return {};
}

class OrderWriter
{
  public:
    explicit OrderWriter(const OrderFile& file) : file_(file), order_(file.order) {}

    Reading<std::string> write()
    {
        settleForm();
        needText("JOB", file_.job);
        put("DO", "B");
        needText("CLIENT", order_.person);
        writePowers();
        writePrism();
        writeCentration();
        put("LTYPE", order_.purpose == Purpose::bifocal ? "BI;BI" : "SV;SV");
        writeFrame();
        writeOurs();
        for (const auto& missing : order_.missing) // still to be measured: the order can be written, not sent
            tell(Severity::caution, "order-incomplete", missing);
        if (std::any_of(written_.findings.begin(), written_.findings.end(),
                        [](const Finding& finding) { return finding.severity == Severity::error; }))
            written_.value.clear();
        return std::move(written_);
    }

  private:
    void tell(Severity severity, const char* code, Sentence sentence)
    {
        written_.findings.push_back({severity, {}, code, std::move(sentence)});
    }

    void put(const char* label, const std::string& value)
    {
        written_.value.append(label).append("=").append(value).append("\r\n");
    }

    /// A field of both eyes; "?" where there is nothing, left out where there is nothing in both.
    template <class Words>
    void putEyes(const char* label, const Words& words)
    {
        const std::string right = words(Eye::right);
        const std::string left = words(Eye::left);
        if (!right.empty() || !left.empty())
            put(label, (right.empty() ? "?" : right) + ";" + (left.empty() ? "?" : left));
    }

    void putText(const char* label, const std::string& text)
    {
        if (text.empty())
            return;
        std::string plain = text.substr(0, longestText);
        std::replace_if(
            plain.begin(), plain.end(), [](char c) { return !printable(c); }, ' ');
        if (plain != text)
            tell(Severity::caution, "order-text",
                 {QS_SAY("core", "\"%1\" cannot be written in plain letters; it leaves as \"%2\""),
                  {shown(text), plain}});
        put(label, plain);
    }

    void needText(const char* label, const std::string& text)
    {
        if (!text.empty() && text.size() <= longestText && std::all_of(text.begin(), text.end(), printable))
            put(label, text);
        else
            tell(Severity::error, "order-text",
                 {QS_SAY("core",
                         "\"%1\" cannot stand in an order: plain letters and digits, at most 80, without ; "
                         "= , ?"),
                  {shown(text)}});
    }

    void settleForm()
    {
        form_ = order_.form;
        const auto sign = [&](Eye eye) { return order_.lenses.of(eye).power.cylinder.thousandths(); };
        if (form_ != CylinderForm::asWritten)
            return;
        const bool plus = sign(Eye::right) > 0 || sign(Eye::left) > 0;
        const bool minus = sign(Eye::right) < 0 || sign(Eye::left) < 0;
        form_ = plus && !minus ? CylinderForm::plus : CylinderForm::minus;
        if (plus && minus)
            tell(Severity::caution, "order-form",
                 {QS_SAY("core",
                         "the eyes are written in two cylinder forms; both leave with minus cylinders"),
                  {}});
    }

    void writePowers()
    {
        const auto power = [&](Eye eye) { return inFormOf(order_.lenses.of(eye).power, form_); };
        putEyes("SPH", [&](Eye eye) { return decimalText(power(eye).sphere.value()); });
        const auto toric = [&](Eye eye) { return power(eye).cylinder != Dioptres{}; };
        if (toric(Eye::right) || toric(Eye::left)) {
            putEyes("CYL", [&](Eye eye) { return decimalText(power(eye).cylinder.value()); });
            putEyes("AX", [&](Eye eye) { return toric(eye) ? writeNumber(power(eye).axis.value()) : "0"; });
        }
        putEyes("ADD", [&](Eye eye) {
            const auto& addition = order_.lenses.of(eye).addition;
            return addition ? decimalText(addition->value()) : std::string();
        });
    }

    void writePrism()
    {
        const auto any = [&](Eye eye) { return !(order_.lenses.of(eye).prism == EyePrism{}); };
        if (!any(Eye::right) && !any(Eye::left))
            return;
        putEyes("PRVM", [&](Eye eye) { return prismWordsOf(order_.lenses.of(eye).prism, eye).amount; });
        putEyes("PRVA", [&](Eye eye) { return prismWordsOf(order_.lenses.of(eye).prism, eye).base; });
    }

    void writeCentration()
    {
        const auto millimetres = [&](std::optional<double> OrderedLens::*member) {
            return [this, member](Eye eye) {
                const auto& value = order_.lenses.of(eye).*member;
                return value ? writeNumber(*value) : std::string();
            };
        };
        const bool near = order_.purpose == Purpose::near || order_.purpose == Purpose::intermediate;
        const char* label = near ? "NPD" : "IPD";
        if (order_.lenses.right.centration || order_.lenses.left.centration)
            putEyes(label, millimetres(&OrderedLens::centration));
        else
            put(label, "?;?");
        putEyes(order_.purpose == Purpose::bifocal ? "SEGHT" : "OCHT", millimetres(&OrderedLens::height));
    }

    void writeFrame()
    {
        const auto both = [](double value) {
            return [value](Eye) { return value > 0.0 ? writeNumber(value) : std::string(); };
        };
        putEyes("HBOX", both(file_.frame.lens));
        putEyes("VBOX", both(file_.frame.height));
        if (file_.frame.bridge > 0.0)
            put("DBL", writeNumber(file_.frame.bridge));
        if (order_.vertexMm)
            putEyes("BVD", both(*order_.vertexMm));
    }

    void writeOurs()
    {
        put("_PURPOSE", wordOf(order_.purpose));
        if (order_.workingMm)
            put("_WORKMM", writeNumber(*order_.workingMm));
        putText("_RXDATE", order_.writtenOn);
        putText("_FRAME", order_.frame);
        putText("_SIZE", order_.frameSize);
        for (const Eye eye : bothEyes)
            if (order_.lenses.of(eye).followsFellow)
                put("_FELLOW", eye == Eye::right ? "R" : "L");
        putText("_PROFILE", file_.rules.profile + " " + file_.rules.version);
        putText("_RULES", file_.rules.hash);
    }

    const OrderFile& file_;
    const LaboratoryOrder& order_;
    CylinderForm form_ = CylinderForm::minus;
    Reading<std::string> written_;
};

} // namespace

Reading<std::string> writeOrderFile(const OrderFile& file)
{
    return OrderWriter(file).write();
}

} // namespace quarterstep
