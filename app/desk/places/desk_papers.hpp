// SPDX-License-Identifier: GPL-3.0-or-later
// Papers from the desk: the note, the letter, the order of one person, in the language of the window, drawn
// by a worker into a PDF of the camp folder or on the printer chosen.
#pragma once

#include "app/paper/content/paper_job.hpp"
#include "app/session/camp.hpp"

#include <QObject>
#include <QString>

#include <memory>

class QThread;

namespace quarterstep
{

struct PaperQuestion {
    PaperKind kind = PaperKind::note;
    const PersonRecord* person = nullptr;
    const Recommendation* answer = nullptr;
    std::vector<Part> parts; ///< given or chosen; may be empty
    bool handedOver = false;
    std::string reason;
    std::optional<TrialAcuity> trial;
};

/// A new name in the folder "papers" of the camp, which is made: WORD-PERSON-MOMENT.ENDING. Throws Error
/// file-unwritable (4).
[[nodiscard]] std::string paperPath(const Camp& camp, const QString& word, const std::string& person,
                                    const QString& ending);

/// Where papers of this camp come from: now.
[[nodiscard]] PaperSource sourceOf(const Camp& camp);

/// The language the window speaks; English where it is none of those that papers speak.
[[nodiscard]] const Language* windowLanguage();

/// Throws Error paper-not-for (3) for an order without a complete prescription, paper-person-empty (3).
[[nodiscard]] Paper deskPaper(const Camp& camp, const PaperQuestion& question);

struct PackOfCamp;
/// What goes into which box, lines that are new among it.
[[nodiscard]] Paper deskPackingList(const Camp& camp, const PackOfCamp& plan);

/// A thread of its own beside LongWork: a note is drawn while an audit goes on, a second one waits for the
/// first instead of being refused, and a window that closes waits until the paper of a hand-over is there,
/// where LongWork stops what it does.
class PaperWorker final : public QObject
{
    Q_OBJECT

  public:
    explicit PaperWorker(QObject* parent = nullptr);
    ~PaperWorker() override;

    /// Draws the paper for this person; one at a time, a second one waits for the first. The name of a
    /// printer, or empty for a PDF in the folder "papers" of the camp. Throws Error file-unwritable (4).
    void draw(Paper paper, const Camp& camp, const std::string& person, const std::string& printer);

  Q_SIGNALS:
    /// `code` is empty when it went well; then `words` name the file or the printer.
    void drawn(const QString& words, const QString& code);

  private:
    void finish();

    std::unique_ptr<QThread> thread_;
};

} // namespace quarterstep
