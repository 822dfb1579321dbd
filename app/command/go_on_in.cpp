// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/command/go_on_in.hpp"

#include "app/session/beside.hpp"

#include <QCoreApplication>

#include <cerrno>
#include <cstring>
#include <vector>

#include <unistd.h>

namespace quarterstep
{

NotStarted goOnIn(const char* program)
{
    const auto path = programBeside(program).toLocal8Bit();
    std::vector<QByteArray> words;
    for (const auto& argument : QCoreApplication::arguments())
        words.push_back(argument.toLocal8Bit());
    std::vector<char*> arguments;
    arguments.reserve(words.size() + 1);
    for (auto& word : words)
        arguments.push_back(word.data());
    arguments.push_back(nullptr);
    ::execv(path.constData(), arguments.data()); // returns only by an error
    return {path.toStdString(), std::strerror(errno)};
}

} // namespace quarterstep
