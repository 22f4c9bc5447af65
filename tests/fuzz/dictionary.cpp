// SPDX-License-Identifier: MIT
// Prints every key, word and option as a dictionary for libFuzzer.
#include "cli/option_table.hpp"
#include "read/keys.hpp"

#include <cstdio>
#include <set>
#include <string>
#include <utility>

using namespace pelt;

namespace {

/// What no table holds: signs, units, and what numbers are wrong.
const std::set<std::string> others{": ",
                                   "- ",
                                   "[",
                                   "]",
                                   "{",
                                   "}",
                                   ", ",
                                   "\n",
                                   "\n  ",
                                   "\"",
                                   "'",
                                   "#",
                                   "---\n",
                                   "mm",
                                   "cm",
                                   " in",
                                   " ft",
                                   " yd",
                                   " m",
                                   "%",
                                   "1/2",
                                   "..",
                                   "yes",
                                   "no",
                                   "&a ",
                                   "*a",
                                   "<<: ",
                                   "!!str ",
                                   "-1",
                                   "1e9",
                                   "nan",
                                   "inf",
                                   "0x10",
                                   "010",
                                   "99999999999",
                                   "\\xff",
                                   "\\xef\\xbb\\xbf",
                                   "\\x00",
                                   "all",
                                   "top",
                                   "v ",
                                   "f ",
                                   "vn ",
                                   "ply\n",
                                   "solid ",
                                   "facet normal ",
                                   "vertex ",
                                   "element vertex ",
                                   "property float x\n",
                                   "property list uchar int vertex_indices\n",
                                   "end_header\n",
                                   "format ascii 1.0\n",
                                   "format binary_little_endian 1.0\n",
                                   "format binary_big_endian 1.0\n",
                                   "\n%%\n"};

std::string quoted(const std::string& word) {
    std::string out = "\"";
    for (const char c : word)
        if (c == '\n')
            out += "\\x0a";
        else
            out += c == '"' ? "\\\"" : std::string(1, c);
    return out + "\"";
}

void add_words(std::string_view choices, std::set<std::string>& words) {
    std::string word;
    for (const char c : std::string(choices) + "|")
        if (c != '|' && c != ' ')
            word += c;
        else if (!word.empty())
            words.insert(std::exchange(word, {}));
}

} // namespace

int main() {
    std::set<std::string> words = others;
    for (const read::Key& key : read::all_keys()) {
        words.insert(std::string(key.name) + ": ");
        if (!key.also.empty())
            words.insert(std::string(key.also) + ": ");
        add_words(key.choices, words);
    }
    for (const cli::OptionRow& option : cli::options()) {
        words.insert("--" + std::string(option.name));
        for (const cli::Choice& choice : option.choices)
            words.insert(std::string(choice.word));
    }
    for (const std::string& word : words)
        std::printf("%s\n", quoted(word).c_str());
    return 0;
}
