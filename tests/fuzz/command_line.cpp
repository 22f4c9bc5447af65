// SPDX-License-Identifier: MIT
// The command line, a word a line.
#include "cli/parse.hpp"
#include "fuzzed.hpp"

#include <utility>

namespace pelt::fuzzed {
namespace {

/// As a shell gives them: no word holds a zero byte.
std::vector<std::string> words_of(std::string_view bytes) {
    std::vector<std::string> out;
    std::string word;
    for (const char c : bytes)
        if (c == '\n')
            out.push_back(std::exchange(word, {}));
        else if (c != '\0')
            word += c;
    if (!word.empty())
        out.push_back(word);
    return out;
}

} // namespace

void words(std::string_view bytes) {
    Faults faults;
    const std::vector<std::string> given = words_of(bytes);
    const cli::Arguments found = cli::parse(given, faults);
    for (const Fault& fault : faults) {
        expect(fault.what.size() > 5, "no sentence for what is wrong");
        expect_printable(to_string(fault));
    }
    const bool asks_for_help = found.count(cli::Opt::help) + found.count(cli::Opt::version) > 0;
    expect(given.empty() || stops(faults) || found.command || asks_for_help,
           "neither a command nor a fault");
    for (const auto& [option, values] : found.values)
        expect(!values.empty(), "an option that was never given");
}

} // namespace pelt::fuzzed
