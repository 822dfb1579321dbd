// SPDX-License-Identifier: GPL-3.0-or-later
// Any rows as the ledger of another camp, merged into one of ours: no crash, no hang; either it is refused
// and ours is as it was, or our chain and counts stay true and merging again adds nothing. The input is text,
// a row a line:
//   a…  b…  c…   an entry of one of three stations with this payload; $S its id, $0 … $9 ids of entries
//   A…  B…  C…   the same with a hash that does not fit
//   w…           words of the entry before, stored with their salt; $W in a payload is the hash of "words"
//   x            blanks the words of the entry before
//   m…           a movement row more, of the entry before, of this line
//   n…           a number of the entry after that is not the next one
#include "inventory/store/connection.hpp"
#include "inventory/store/merge.hpp"
#include "inventory/store/payload.hpp"

#include "inventory/store/entry_id.hpp"
#include "tests/fuzz/checks.hpp"

#include <QCoreApplication>

#include <filesystem>
#include <map>

using namespace quarterstep;
using fuzz::require;

namespace
{

namespace fs = std::filesystem;

std::string stationOf(char letter)
{
    return std::string(15, '\x11') + letter;
}

std::string entryIdOf(char digit)
{
    return std::string("\x01\x90\0\0\0\0\x70\0\x80\0\0\0\0\0\0", 15) + digit;
}

const std::string salt(32, 's'); // NOLINT(cert-err58-cpp): a test's constant

void replaceAll(std::string& text, const std::string& what, const std::string& with)
{
    for (auto at = text.find(what); at != std::string::npos; at = text.find(what, at + with.size()))
        text.replace(at, what.size(), with);
}

/// Camps that every input begins from, made once: ours, and an empty one whose rows the input writes.
class Camps
{
  public:
    Camps()
    {
        const fs::path memory = "/dev/shm"; // nothing here waits for a disk
        std::string pattern =
            ((fs::exists(memory) ? memory : fs::temp_directory_path()) / "qs-fuzz-XXXXXX").string();
        folder_ = mkdtemp(pattern.data());
        {
            auto ours = Ledger::open(folder_ + "/ours", Ledger::Mode::readWrite);
            ours.introduce("Base", {{"A", 5, 0, 0}, {"B", 1, 0, 0}});
            auto theirs = Ledger::open(folder_ + "/theirs", Ledger::Mode::readWrite);
        }
        fs::create_directory(folder_ + "/now");
    }
    Camps(const Camps&) = delete;
    Camps& operator=(const Camps&) = delete;
    ~Camps()
    {
        std::error_code ignored;
        fs::remove_all(folder_, ignored);
    }
    [[nodiscard]] std::string fresh(const std::string& name) const
    {
        const auto path = folder_ + "/now/" + name;
        for (const char* end : {"-wal", "-shm"})
            fs::remove(path + end);
        fs::copy_file(folder_ + "/" + name, path, fs::copy_options::overwrite_existing);
        return path;
    }

  private:
    std::string folder_;
};

/// Writes the rows of an input into a ledger file, past everything that would refuse them.
class RowWriter
{
  public:
    explicit RowWriter(const std::string& path) : connection_(path, Connection::Access::readWrite, 100)
    {
        connection_.execute("PRAGMA synchronous = OFF");
        connection_.execute("PRAGMA foreign_keys = OFF");
        trigger_ = connection_.textOf("SELECT sql FROM sqlite_schema WHERE name = 'remark_stays'");
        connection_.execute("DROP TRIGGER remark_stays");
        connection_.execute("BEGIN");
    }

    void row(const std::string& text)
    {
        if (text.empty())
            return;
        const auto rest = text.substr(1);
        if (text[0] >= 'a' && text[0] <= 'c')
            entry(text[0], rest, true);
        else if (text[0] >= 'A' && text[0] <= 'C')
            entry(static_cast<char>(text[0] - 'A' + 'a'), rest, false);
        else if (text[0] == 'w')
            run("INSERT OR REPLACE INTO remark VALUES (?, 'reason', ?, ?)", {position_, Blob{salt}, rest});
        else if (text[0] == 'x')
            run("UPDATE remark SET salt = NULL, words = NULL WHERE entry = ?", {position_});
        else if (text[0] == 'm')
            move(90, {rest, -1, "pair", 0, 0}, "Base");
        else if (text[0] == 'n')
            next_ = rest.size() % 7;
    }

    void end()
    {
        connection_.execute(
            trigger_); // as it was: a ledger with another rule is refused before anything is read
        connection_.execute("COMMIT");
    }

  private:
    struct Link {
        std::int64_t key = 0;
        std::int64_t number = 0;
        std::string hash = chainStart();
    };

    void run(const char* sql, std::initializer_list<StoreValue> values)
    {
        auto statement = connection_.prepare(sql);
        (void)statement.tryRun(values); // what the table itself refuses is not written
        statement.finish();
    }

    Link& linkOf(char letter)
    {
        auto& link = links_[letter];
        if (link.key == 0) {
            link.key = 10 + letter;
            run("INSERT INTO station VALUES (?, ?, 0, '', '', '')", {link.key, Blob{stationOf(letter)}});
        }
        return link;
    }

    void entry(char letter, std::string payload, bool fits)
    {
        auto& link = linkOf(letter);
        replaceAll(payload, "$S", idText(stationOf(letter)));
        replaceAll(payload, "$N", std::to_string(link.number + 1));
        replaceAll(payload, "$W", saltedHash(salt, "words"));
        for (char digit = '0'; digit <= '9'; ++digit)
            replaceAll(payload, std::string("$") + digit, idText(entryIdOf(digit)));
        payload = validUtf8(payload);
        const auto stored = readPayload(payload).value_or(PayloadEntry{});
        const auto number = next_ > 0 ? static_cast<std::int64_t>(next_) : link.number + 1;
        next_ = 0;
        const auto hash = chainHash(fits ? link.hash : chainStart() + "x", payload);
        const auto cancels = idBytes(stored.entry.cancels);
        run("INSERT INTO entry (position, id, station, number, kind, at_ms, person, cancels, payload, hash) "
            "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
            {++position_, Blob{idBytes(stored.entry.id)}, link.key, number,
             std::string(wordOf(stored.entry.kind)), stored.entry.atMs, stored.entry.person,
             cancels.empty() ? StoreValue{} : StoreValue{Blob{cancels}}, payload, Blob{hash}});
        link.number = number;
        link.hash = hash;
        std::int64_t place = 0;
        for (const auto& movement : stored.entry.movements)
            move(++place, movement, stored.site);
    }

    void move(std::int64_t place, const Movement& movement, const std::string& site)
    {
        run("INSERT OR IGNORE INTO balance (site, line) VALUES (?, ?)", {site, movement.line});
        run("INSERT INTO movement (entry, place, site, line, delta, part, held, quarantined) VALUES (?, ?, "
            "?, ?, ?, "
            "?, ?, ?)",
            {position_, place, site, movement.line, std::int64_t{movement.delta}, movement.part,
             std::int64_t{movement.held}, std::int64_t{movement.quarantined}});
    }

    Connection connection_;
    std::string trigger_;
    std::map<char, Link> links_;
    std::int64_t position_ = 0;
    std::size_t next_ = 0;
};

void writeRows(const std::string& path, const std::string& text)
{
    RowWriter writer(path);
    for (std::size_t begin = 0; begin <= text.size();) {
        const auto end = std::min(text.find('\n', begin), text.size());
        writer.row(text.substr(begin, end - begin));
        begin = end + 1;
    }
    writer.end();
}

/// What is read is written as text that reads back the same.
void checkPayload(const std::string& text)
{
    const auto stored = readPayload(text);
    if (!stored)
        return;
    const auto written = payloadOf(*stored);
    const auto again = readPayload(written);
    require(again.has_value(), "a payload that was written is read");
    require(payloadOf(*again) == written, "and is written the same");
}

struct Content {
    std::int64_t position = 0;
    std::vector<Entry> entries;
};

void checkOurs(const Ledger& ours)
{
    const auto chain = ours.checkChain();
    if (!chain.ok)
        std::fprintf(stderr, "%s\n", chain.what.c_str());
    require(chain.ok, "our chain and counts stay true");
    for (const auto& balance : ours.balances("Base"))
        require(balance.onHand >= 0 && balance.held >= 0 && balance.quarantined >= 0, "no count below zero");
    require(static_cast<std::int64_t>(ours.entriesAfter(0).size()) == chain.entries,
            "every entry can be read");
}

void checkMerge(const Camps& camps, const std::string& theirPath)
{
    auto ours = Ledger::open(camps.fresh("ours"), Ledger::Mode::readWrite);
    ours.claimPlace();
    const auto before = ours.position();
    bool merged = false;
    try {
        const auto theirs = Ledger::open(theirPath, Ledger::Mode::readOnly);
        const auto planned = mergeLedger(ours, theirs, true);
        require(ours.position() == before, "a dry run writes nothing");
        const auto report = mergeLedger(ours, theirs);
        merged = true;
        require(report.added == planned.added, "the dry run said what would be");
        require(ours.position() == before + report.added, "what was said to be added is there");
        require(mergeLedger(ours, theirs).added == 0, "merging again adds nothing");
    } catch (const Error& error) {
        require(!merged, "what was merged once is merged again");
        require(!error.finding().code.empty() && error.exitCode() >= 2, "a refusal has its code");
        require(ours.position() == before, "what is refused writes nothing");
    }
    checkOurs(ours);
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    static int count = 1;
    static char name[] = "fuzz_import";
    static char* names[] = {name, nullptr};
    static QCoreApplication application(count, names);
    static const Camps camps;
    const std::string text(data, data + size);
    if (!text.empty() && text[0] == '{') {
        checkPayload(text);
        return 0;
    }
    const auto path = camps.fresh("theirs");
    try {
        writeRows(path, text);
    } catch (const Error&) {
        return 0; // not rows that a database takes
    }
    checkMerge(camps, path);
    return 0;
}
