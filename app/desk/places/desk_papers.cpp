// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/places/desk_papers.hpp"

#include "app/paper/content/papers.hpp"
#include "app/paper/render/render.hpp"
#include "app/session/keeping.hpp"
#include "app/session/pack_camp.hpp"
#include "app/session/send_out.hpp"
#include "app/session/wording.hpp"

#include <QDate>
#include <QDateTime>
#include <QDir>
#include <QGuiApplication>
#include <QThread>

namespace quarterstep
{

namespace
{
PersonAnswer answeredFor(const Camp& camp, const PaperQuestion& question)
{
    PersonAnswer told;
    const auto* trial = question.trial ? &*question.trial : nullptr;
    if (!question.parts.empty())
        told.pair = pairFor(*question.answer, question.parts, camp.stock(), camp.rules(), trial);
    if (told.pair) {
        told.pair->handedOver = question.handedOver;
        told.pair->reason = question.reason;
    }
    if (question.answer->interim)
        told.interim = pairFor(*question.answer, question.answer->interim->parts, camp.stock(), camp.rules());
    if (const auto* profile = camp.rules().find(question.answer->profile))
        told.profileVersion = profile->version;
    told.recommendation = *question.answer;
    return told;
}
} // namespace

PaperSource sourceOf(const Camp& camp)
{
    return {camp.site(), QDate::currentDate().toString(Qt::ISODate).toStdString(), camp.rules().hash,
            QUARTERSTEP_VERSION};
}

std::string paperPath(const Camp& camp, const QString& word, const std::string& person, const QString& ending)
{
    const auto folder = QString::fromStdString(camp.folder()) + QStringLiteral("/papers");
    if (!QDir().mkpath(folder))
        throw errorSaying("file-unwritable",
                          {QS_SAY("core", "the folder %1 cannot be made"), {folder.toStdString()}}, 4);
    return QStringLiteral("%1/%2-%3-%4.%5")
        .arg(folder, word, fileWord(person),
             QDateTime::currentDateTime().toString(QStringLiteral("yyyyMMdd-HHmmss")), ending)
        .toStdString();
}

const Language* windowLanguage()
{
    auto code = qApp->property("quarterstepLanguage").toString();
    if (code.isEmpty())
        code = QGuiApplication::isRightToLeft() ? QStringLiteral("ar") : QStringLiteral("en");
    const auto* found = languageNamed(code.toStdString());
    return found ? found : languageNamed("en");
}

Paper deskPaper(const Camp& camp, const PaperQuestion& question)
{
    const auto& person = *question.person;
    const auto told = answeredFor(camp, question);
    const auto source = sourceOf(camp);
    if (question.kind == PaperKind::letter)
        return referralLetter(person, told, source);
    if (question.kind != PaperKind::laboratoryOrder)
        return handOverNote(person, told, source);
    if (!question.answer->need)
        throw errorSaying(
            "paper-not-for",
            {QS_SAY("core", "the prescription of %1 is not complete; there is no order to print"),
             {person.person}},
            3);
    return laboratoryOrderPaper(person, told,
                                laboratoryOrder(person, *question.answer->need, CylinderForm::minus), source);
}

Paper deskPackingList(const Camp& camp, const PackOfCamp& plan)
{
    std::map<std::string, const StockLine*> lines;
    for (const auto* some : {&plan.stock, &plan.question.supplier.lines})
        for (const auto& line : *some)
            lines.emplace(line.name, &line);
    std::vector<PackingRow> rows;
    rows.reserve(plan.answer.boxes.size());
    for (const auto& row : plan.answer.boxes)
        rows.push_back(packingRow(*lines.at(row.line), std::to_string(row.box), row.bin, row.quantity));
    return packingList(std::move(rows), sourceOf(camp));
}

PaperWorker::PaperWorker(QObject* parent) : QObject(parent) {}

PaperWorker::~PaperWorker()
{
    finish();
}

void PaperWorker::finish()
{
    if (thread_)
        thread_->wait();
    thread_.reset();
}

void PaperWorker::draw(Paper paper, const Camp& camp, const std::string& person, const std::string& printer)
{
    finish();
    PaperJob job;
    job.language = windowLanguage();
    job.size = usualSize(paper.kind);
    job.printer = printer;
    if (printer.empty())
        job.output = paperPath(camp, QString::fromUtf8(wordOf(paper.kind)), person, QStringLiteral("pdf"));
    const auto name = paperName(paper.kind);
    job.papers = {std::move(paper)};
    thread_.reset(QThread::create([this, job = std::move(job), name] {
        QString words;
        QString code;
        try {
            const auto made = drawPapers(job, [](int, int) { return true; });
            words = made.files.empty() ? tr("%1: sent to %2.").arg(name, ltr(job.printer))
                                       : tr("%1: written to %2.").arg(name, ltr(made.files.front()));
        } catch (const Error& problem) {
            words = say(problem.finding());
            code = QString::fromStdString(problem.finding().code);
        }
        Q_EMIT drawn(words, code);
    }));
    thread_->start();
}

} // namespace quarterstep
