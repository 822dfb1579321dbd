// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/text/csv.hpp"

#include <string_view>

namespace quarterstep
{

namespace
{

class CsvParser
{
  public:
    CsvParser(const SourceText& source, char separator)
        : source_(source), text_(source.text()), separator_(separator),
          blanks_(separator == '\t' ? " " : " \t")
    {
    }

    Reading<std::vector<CsvRow>> parse()
    {
        while (at_ < text_.size() && reading_.usable())
            takeRow();
        return std::move(reading_);
    }

  private:
    void tell(std::vector<Finding>& findings, std::size_t where, const char* code, Sentence sentence)
    {
        findings.push_back({Severity::error, source_.at(where), code, std::move(sentence)});
    }

    [[nodiscard]] bool atLineEnd() const
    {
        return at_ >= text_.size() || text_[at_] == '\n' ||
               (text_[at_] == '\r' && at_ + 1 < text_.size() && text_[at_ + 1] == '\n');
    }

    void takeRow()
    {
        CsvRow row;
        row.line = source_.at(at_).line;
        for (;;) {
            row.cells.push_back(takeCell(row));
            if (at_ >= text_.size() || text_[at_] != separator_)
                break;
            ++at_;
        }
        row.end = source_.at(at_);
        while (at_ < text_.size() && text_[at_] == '\r')
            ++at_;
        if (at_ < text_.size() && text_[at_] == '\n')
            ++at_;
        const bool emptyLine = row.cells.size() == 1 && row.cells[0].text.empty() && row.findings.empty();
        if (!emptyLine)
            reading_.value.push_back(std::move(row));
    }

    CsvCell takeCell(CsvRow& row)
    {
        const std::size_t begin = at_;
        while (at_ < text_.size() && blanks_.find(text_[at_]) != std::string_view::npos)
            ++at_;
        if (at_ < text_.size() && text_[at_] == '"')
            return takeQuoted(row);
        CsvCell cell = takePlain(row);
        if (cell.text.empty())
            cell.place = source_.at(begin);
        return cell;
    }

    CsvCell takePlain(CsvRow& row)
    {
        const std::size_t begin = at_;
        bool toldQuote = false;
        for (; !atLineEnd() && text_[at_] != separator_; ++at_) {
            if (text_[at_] == '"' && !toldQuote) {
                tell(row.findings, at_, "csv-quote-inside",
                     {QS_SAY("core",
                             "a quote stands inside a cell; put the whole cell in quotes and double it"),
                      {}});
                toldQuote = true;
            }
            if (text_[at_] == '\r') {
                tell(reading_.findings, at_, "csv-lone-return",
                     {QS_SAY("core",
                             "a lone carriage return ends the line here; save the table with LF or CRLF "
                             "line ends"),
                      {}});
                at_ = text_.size();
                break;
            }
        }
        return {trimmed(text_.substr(begin, at_ - begin)), source_.at(begin)};
    }

    CsvCell takeQuoted(CsvRow& row)
    {
        const std::size_t quote = at_++;
        std::string content;
        for (;;) {
            const std::size_t next = text_.find('"', at_);
            if (next == std::string_view::npos) {
                tell(reading_.findings, quote, "csv-quote-open",
                     {QS_SAY("core", "this quote is never closed; close it before the next comma"), {}});
                at_ = text_.size();
                break;
            }
            content += text_.substr(at_, next - at_);
            at_ = next + 1;
            if (at_ >= text_.size() || text_[at_] != '"')
                break;
            content += '"';
            ++at_;
        }
        skipAfterQuote(row);
        const std::size_t lead = std::min(content.find_first_not_of(blanks_), content.size());
        return {trimmed(content), source_.at(quote + 1 + lead)};
    }

    void skipAfterQuote(CsvRow& row)
    {
        const std::size_t begin = at_;
        while (!atLineEnd() && text_[at_] != separator_)
            ++at_;
        const std::size_t extra = text_.substr(begin, at_ - begin).find_first_not_of(blanks_);
        if (extra != std::string_view::npos)
            tell(row.findings, begin + extra, "csv-after-quote",
                 {QS_SAY("core",
                         "there is text behind the closing quote; move it inside, or double the quote"),
                  {}});
    }

    [[nodiscard]] std::string trimmed(std::string_view text) const
    {
        const std::size_t begin = text.find_first_not_of(blanks_);
        if (begin == std::string_view::npos)
            return {};
        return std::string(text.substr(begin, text.find_last_not_of(blanks_) - begin + 1));
    }

    const SourceText& source_;
    std::string_view text_;
    char separator_;
    std::string_view blanks_; ///< around a cell; a tab that separates is none
    std::size_t at_ = 0;
    Reading<std::vector<CsvRow>> reading_;
};

} // namespace

Reading<std::vector<CsvRow>> parseCsv(const SourceText& source, char separator)
{
    return CsvParser(source, separator).parse();
}

} // namespace quarterstep
