// SPDX-License-Identifier: MIT
#include "cli/completed.hpp"
#include "cli/completion.hpp"

namespace pelt::cli {
namespace {

std::string line_of(const std::string& condition, const std::string& rest) {
    return "complete -c pelt -n " + quoted_for_shell(condition) + " " + rest + "\n";
}

/// Of a value: what is offered.
std::string value_of(const OptionRow& row) {
    if (row.kind == Kind::flag)
        return "";
    std::string words;
    if (row.kind == Kind::choice)
        for (const Choice& choice : row.choices)
            if (choice.works)
                words += (words.empty() ? "" : " ") + std::string(choice.word);
    if (!row.named.empty()) {
        words = "(__pelt_names";
        for (const std::string_view name : row.named)
            words += " " + std::string(name);
        words += ")";
    }
    if (row.kind == Kind::file)
        return " -r -F";
    return words.empty() ? " -x" : " -x -a " + quoted_for_shell(words);
}

std::string option_line(const OptionRow& row, const std::string& condition) {
    std::string rest = "-l " + std::string(row.name);
    if (row.letter != 0)
        rest += std::string(" -s ") + row.letter;
    return line_of(condition, rest + value_of(row) + " -d " + quoted_for_shell(row.line));
}

std::string operand_lines(const std::string& condition, const std::vector<Operand>& operands) {
    std::string out;
    for (const Operand operand : operands)
        if (operand != Operand::file)
            out +=
                line_of(condition, "-a " + quoted_for_shell("(__pelt_installed " +
                                                            std::string(name_of(operand)) + ")"));
    if (!operands.empty())
        out += line_of(condition, "-a '(__fish_complete_suffix .yaml .yml .csv)'");
    return out;
}

/// A function that says whether a word is one of these.
std::string function(const std::string& comment, const std::string& name,
                     const std::vector<std::string>& words) {
    std::string listed;
    for (const std::string& word : words)
        listed += " " + word;
    return "# " + comment + "\nfunction " + name + "\n    contains -- $argv[1]" + listed +
           "\nend\n";
}

std::vector<std::string> spellings_with_values() {
    std::vector<std::string> out;
    for (const OptionRow& row : options())
        if (row.works && row.kind != Kind::flag)
            for (const std::string& spelling : spellings_of(row))
                out.push_back(spelling);
    return out;
}

} // namespace

std::string tables_for_fish() {
    std::vector<std::string> names;
    std::string lines;
    for (const OptionRow& row : options_before_commands())
        lines += option_line(row, "__pelt_has_no_command");
    for (const CommandRow& row : commands()) {
        if (!row.works)
            continue;
        const std::string name(row.name);
        names.push_back(name);
        lines += "\n" + line_of("__pelt_has_no_command",
                                "-a " + name + " -d " + quoted_for_shell(row.line));
        for (const OptionRow& option : options_for(row.id))
            lines += option_line(option, "__pelt_does " + name);
        const Operands operands = operands_of(row);
        lines += operand_lines("__pelt_does " + name + " first", operands.first);
        lines += operand_lines("__pelt_does " + name + " later", operands.later);
    }
    return function("Whether a word is a command.", "__pelt_is_command", names) + "\n" +
           function("Whether an option takes a value.", "__pelt_takes_value",
                    spellings_with_values()) +
           "\n" + lines;
}

} // namespace pelt::cli
