// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/stock_figures.hpp"

#include "core/record/day.hpp"
#include "core/record/life.hpp"

#include <map>

namespace quarterstep
{

namespace
{

/// One day of a camp.
struct Day {
    std::set<std::string> people;
    int unnamed = 0;
    int handOvers = 0;
    std::map<std::string, int> issued;
    std::set<std::string> moved;
};

std::int64_t dayOf(std::int64_t atMs, std::int64_t offsetMs)
{
    const auto local = atMs + offsetMs;
    return local >= 0 ? local / dayMs : (local - dayMs + 1) / dayMs;
}

bool isVisit(EntryKind kind)
{
    switch (kind) {
    case EntryKind::handedOver:
    case EntryKind::exchanged:
    case EntryKind::notNeeded:
    case EntryKind::declined:
    case EntryKind::incomplete:
    case EntryKind::ordered:
    case EntryKind::referred:
    case EntryKind::notServed:
        return true;
    default:
        return false;
    }
}

class Replay
{
  public:
    Replay(std::set<std::string> gone, std::string site, std::int64_t offsetMs)
        : gone_(std::move(gone)), site_(std::move(site)), offsetMs_(offsetMs)
    {
    }

    [[nodiscard]] const std::map<std::int64_t, Day>& days() const { return days_; }
    [[nodiscard]] const CampFigures& camp() const { return camp_; }

    /// Count of a line when a day began.
    [[nodiscard]] std::int64_t countAt(const std::string& line, std::int64_t day) const
    {
        const auto history = counts_.find(line);
        if (history == counts_.end())
            return 0;
        const auto after = history->second.lower_bound(day);
        return after == history->second.begin() ? 0 : std::prev(after)->second;
    }

    void take(const Entry& entry)
    {
        if (entry.site != site_)
            return;
        const auto number = dayOf(entry.atMs, offsetMs_);
        for (const auto& movement : entry.movements) {
            now_[movement.line] += movement.delta;
            counts_[movement.line][number] = now_[movement.line];
        }
        if (gone_.count(entry.id) > 0 || entry.kind == EntryKind::enteredInError)
            return;
        note(entry, days_[number]);
    }

  private:
    void note(const Entry& entry, Day& day)
    {
        if (isVisit(entry.kind) && entry.person.empty())
            ++day.unnamed;
        else if (isVisit(entry.kind))
            day.people.insert(entry.person);
        const bool gives = entry.kind == EntryKind::handedOver || entry.kind == EntryKind::exchanged;
        day.handOvers += gives ? 1 : 0;
        camp_.handOvers += gives ? 1 : 0;
        if (entry.kind == EntryKind::returned || entry.kind == EntryKind::exchanged)
            ++camp_.returned;
        const bool byTwo = entry.kind == EntryKind::counted && entry.fields.count("second") > 0;
        for (const auto& movement : entry.movements) {
            day.moved.insert(movement.line);
            if (gives && movement.delta < 0)
                day.issued[movement.line] -= movement.delta;
            camp_.counted += byTwo ? 1 : 0;
            camp_.countedRight += byTwo && movement.delta == 0 ? 1 : 0;
        }
    }

    std::set<std::string> gone_;
    std::string site_;
    std::int64_t offsetMs_;
    std::map<std::int64_t, Day> days_;
    std::map<std::string, std::int64_t> now_;
    std::map<std::string, std::map<std::int64_t, std::int64_t>> counts_; ///< line -> day -> count at its end
    CampFigures camp_;
};

int peopleOn(const Day& day)
{
    return static_cast<int>(day.people.size()) + day.unnamed;
}

int reorderOf(const StockLine& line)
{
    if (!line.keepLeast || line.available() >= *line.keepLeast)
        return 0;
    return line.keepMost.value_or(*line.keepLeast) - line.available();
}

LineFigures figuresOf(const StockLine& line, const Replay& replay, int campPeople)
{
    LineFigures figures;
    int people = 0; // seen while the line was there
    for (const auto& [number, day] : replay.days()) {
        const auto issued = day.issued.find(line.name);
        figures.issued += issued == day.issued.end() ? 0 : issued->second;
        if (day.handOvers == 0 || (replay.countAt(line.name, number) <= 0 && day.moved.count(line.name) == 0))
            continue;
        ++figures.daysInStock;
        people += peopleOn(day);
    }
    if (figures.issued > 0 && figures.daysInStock > 0)
        figures.daysOfStock = double(line.available()) * figures.daysInStock / figures.issued;
    if (figures.issued > 0 && people > 0)
        figures.campsOfStock = double(line.available()) * people / (double(figures.issued) * campPeople);
    figures.reorder = reorderOf(line);
    return figures;
}

void countLine(CampFigures& camp, const StockLine& line)
{
    ++camp.lines;
    camp.linesOut += line.available() <= 0 ? 1 : 0;
    camp.linesToReorder += reorderOf(line) > 0 ? 1 : 0;
    if (!line.keepLeast && !line.keepMost)
        return;
    ++camp.linesPlanned;
    const bool enough = line.available() >= line.keepLeast.value_or(0);
    const bool notTooMany = !line.keepMost || line.available() <= *line.keepMost;
    camp.linesToPlan += enough && notTooMany ? 1 : 0;
}

} // namespace

struct FiguresReplay::Inside {
    Replay replay;
};

FiguresReplay::FiguresReplay(std::set<std::string> gone, std::string site, std::int64_t offsetMs)
    : inside_(std::make_unique<Inside>(Inside{Replay(std::move(gone), std::move(site), offsetMs)}))
{
}
FiguresReplay::FiguresReplay(FiguresReplay&&) noexcept = default;
FiguresReplay& FiguresReplay::operator=(FiguresReplay&&) noexcept = default;
FiguresReplay::~FiguresReplay() = default;

void FiguresReplay::take(const Entry& entry)
{
    inside_->replay.take(entry);
}

StockFigures FiguresReplay::figures(std::span<const StockLine> stock, int campPeople) const
{
    const auto& replay = inside_->replay;
    StockFigures figures;
    figures.camp = replay.camp();
    for (const auto& [number, day] : replay.days())
        if (day.handOvers > 0) {
            ++figures.camp.days;
            figures.camp.people += peopleOn(day);
        }
    for (const auto& line : stock) {
        countLine(figures.camp, line);
        figures.lines.push_back(figuresOf(line, replay, campPeople));
    }
    return figures;
}

StockFigures stockFigures(std::span<const Entry> entries, const std::string& site,
                          std::span<const StockLine> stock, const FiguresOptions& options)
{
    FiguresReplay replay(takenBack(entries), site, options.offsetMs);
    for (const auto& entry : entries)
        replay.take(entry);
    return replay.figures(stock, options.campPeople);
}

} // namespace quarterstep
