// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/card/readings_words.hpp"

#include "app/session/wording.hpp"
#include "core/optics/power_vector.hpp"
#include "core/optics/readings.hpp"

#include <QCoreApplication>
#include <QStringList>

#include <cmath>

namespace quarterstep
{

namespace
{
struct TypedReadings {
    std::vector<PowerVector> vectors;
    std::vector<SpheroCylinder> powers;
    std::optional<Complaint> complaint;
};

TypedReadings typedReadings(const QString& text)
{
    TypedReadings read;
    int before = 0;
    for (const auto& part : text.split(QLatin1Char(';'))) {
        const auto written = part.trimmed();
        const int offset = before;
        before += static_cast<int>(part.size()) + 1;
        if (written.isEmpty())
            continue;
        const auto power = parsePower(written.toStdString());
        if (!power) {
            read.complaint = power.complaint();
            read.complaint->offset += offset;
            return read;
        }
        read.powers.push_back(power.value());
        read.vectors.push_back(toPowerVector(power.value()));
    }
    return read;
}

/// To a hundredth of a dioptre and a whole degree, as an instrument prints it.
SpheroCylinder asPrinted(const PowerVector& mean)
{
    const auto power = toSpheroCylinder(mean);
    const auto hundredth = [](Dioptres d) { return Dioptres{std::round(d.value() * 100.0) / 100.0}; };
    const double axis = std::round(power.axis.value());
    return {hundredth(power.sphere), hundredth(power.cylinder), AxisDegrees{axis < 1.0 ? 180.0 : axis}};
}
} // namespace

std::optional<Complaint> takeReadings(EyeRecord& eye, const QString& text)
{
    const auto read = typedReadings(text);
    if (read.complaint)
        return read.complaint;
    eye.objective.reset();
    eye.repeated.reset();
    if (read.powers.size() == 1)
        eye.objective = read.powers.front();
    if (read.powers.size() < 2)
        return {};
    const auto summary = summariseReadings(read.vectors);
    eye.objective = asPrinted(summary.mean);
    if (summary.covariance && !summary.published)
        eye.repeated = RepeatedReadings{*summary.covariance, summary.used};
    return {};
}

QString steadinessWords(const QString& readings, const QString& final, Eye which)
{
    const auto read = typedReadings(readings);
    if (read.complaint || read.vectors.empty())
        return {};
    const auto summary = summariseReadings(read.vectors);
    QStringList words;
    if (read.vectors.size() > 1)
        words << ltr(writePower(asPrinted(summary.mean)));
    words << say(summary.statement);
    if (!summary.advice.empty())
        words << say(summary.advice);
    const auto written = parseEye(final.trimmed().toStdString(), which);
    if (written && written.value().state == EyeState::measured)
        words << say(agreementWithFinal(summary, toPowerVector(written.value().power)).statement);
    const auto name = which == Eye::right ? QCoreApplication::translate("PrescriptionCard", "Right eye: %1")
                                          : QCoreApplication::translate("PrescriptionCard", "Left eye: %1");
    return name.arg(words.join(QStringLiteral("; ")));
}

} // namespace quarterstep
