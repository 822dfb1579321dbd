// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/store/entry_id.hpp"

#include <QRandomGenerator>
#include <QUuid>
#include <QtEndian>

#include <array>
#include <cstring>

namespace quarterstep
{

EntryIds::EntryIds() : random_(QRandomGenerator::system()->generate64()) {}

void EntryIds::startAfter(std::string_view id)
{
    if (id.size() != 16)
        return;
    const auto high = qFromBigEndian<quint64>(id.data());
    if (((high >> 12) & 0xf) != 7)
        return;
    const std::uint64_t ms = high >> 16;
    const std::uint64_t count = high & 0xfff;
    if (ms > last_ || (ms == last_ && count > count_)) {
        last_ = ms;
        count_ = count;
    }
}

std::string EntryIds::next(std::int64_t nowMs)
{
    if (nowMs > 0 && static_cast<std::uint64_t>(nowMs) > last_) {
        last_ = static_cast<std::uint64_t>(nowMs);
        count_ = random_() & 0x7ff; // the upper half stays free for ids of the same millisecond
    } else if (++count_ > 0xfff) {
        ++last_;
        count_ = random_() & 0x7ff;
    }
    std::string id(16, '\0');
    qToBigEndian<quint64>((last_ << 16) | 0x7000U | count_, id.data());
    qToBigEndian<quint64>((random_() >> 2) | (quint64(2) << 62), id.data() + 8);
    return id;
}

std::string randomId()
{
    return QUuid::createUuid().toRfc4122().toStdString();
}

std::string randomSalt()
{
    std::array<quint32, 8> words{};
    QRandomGenerator::system()->fillRange(words.data(), words.size());
    std::string salt(sizeof words, '\0');
    std::memcpy(salt.data(), words.data(), salt.size());
    return salt;
}

std::string idText(std::string_view bytes)
{
    if (bytes.size() != 16)
        return {};
    static constexpr char digits[] = "0123456789abcdef";
    std::string text;
    text.reserve(36);
    for (std::size_t i = 0; i < bytes.size(); ++i) {
        if (i == 4 || i == 6 || i == 8 || i == 10)
            text += '-';
        const auto byte = static_cast<unsigned char>(bytes[i]);
        text += digits[byte >> 4U];
        text += digits[byte & 15U];
    }
    return text;
}

std::string idBytes(const std::string& text)
{
    const auto id = QUuid::fromString(QString::fromStdString(text));
    return id.isNull() ? std::string() : id.toRfc4122().toStdString();
}

} // namespace quarterstep
