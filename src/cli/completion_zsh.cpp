// SPDX-License-Identifier: MIT
#include "cli/completed.hpp"
#include "cli/completion.hpp"

namespace pelt::cli {
namespace {

/// Inside the brackets and fields of a specification: colons and brackets part it.
std::string in_specification(std::string_view text) {
    std::string out;
    for (const char c : text)
        out += (c == ':' || c == '[' || c == ']' || c == '\\') ? std::string{'\\', c}
                                                               : std::string(1, c);
    return out;
}

/// What completes a value; a blank: nothing does.
std::string action_of(const OptionRow& row) {
    if (row.kind == Kind::choice) {
        std::string words;
        for (const Choice& choice : row.choices)
            if (choice.works)
                words += (words.empty() ? "" : " ") + std::string(choice.word);
        return "(" + words + ")";
    }
    if (!row.named.empty()) {
        std::string call = "_pelt_names";
        for (const std::string_view name : row.named)
            call += " " + std::string(name);
        return call;
    }
    return row.kind == Kind::file ? "_files" : " ";
}

/// One specification a spelling. One that may not be repeated keeps the other out too.
std::string specifications_of(const OptionRow& row, bool repeats) {
    const std::vector<std::string> spellings = spellings_of(row);
    std::string both;
    for (const std::string& spelling : spellings)
        both += (both.empty() ? "" : " ") + spelling;
    const std::string before = repeats ? "*" : "(" + both + ")";
    std::string out;
    for (const std::string& spelling : spellings) {
        const bool is_long = spelling.size() > 2;
        std::string text = before + spelling;
        if (row.kind != Kind::flag)
            text += is_long ? "=" : "+";
        text += "[" + in_specification(row.line) + "]";
        if (row.kind != Kind::flag)
            text += ":" + in_specification(row.value.empty() ? row.name : row.value) + ":" +
                    action_of(row);
        out += "        " + quoted_for_shell(text) + " \\\n";
    }
    return out;
}

std::string operand_specification(const std::string& which, const std::vector<Operand>& operands) {
    if (operands.empty())
        return "";
    std::string text = which + ":";
    std::string call;
    for (const Operand operand : operands) {
        text += (call.empty() ? "" : " or ") + std::string(name_of(operand));
        call += " " + std::string(name_of(operand));
    }
    return "        " + quoted_for_shell(text + ":_pelt_operand" + call) + " \\\n";
}

std::string function_of(const CommandRow& command) {
    std::string specifications;
    for (const OptionRow& row : options_for(command.id))
        specifications += specifications_of(row, may_repeat(row, command.id));
    const Operands operands = operands_of(command);
    specifications += operand_specification("1", operands.first);
    specifications += operand_specification("*", operands.later);
    specifications.erase(specifications.size() - 3); // no line goes on behind the last
    return "_pelt_" + std::string(command.name) + "()\n{\n    _arguments -s -S \\\n" +
           specifications + "\n}\n";
}

} // namespace

std::string tables_for_zsh() {
    std::string described;
    std::string functions;
    for (const CommandRow& row : commands()) {
        if (!row.works)
            continue;
        described += "        " +
                     quoted_for_shell(std::string(row.name) + ":" + in_specification(row.line)) +
                     "\n";
        functions += "\n" + function_of(row);
    }
    std::string before;
    for (const OptionRow& row : options_before_commands())
        before += specifications_of(row, row.repeats);
    return "_pelt_commands()\n{\n    local -a described=(\n" + described +
           "    )\n    _describe -t commands command described\n}\n\n" +
           "_pelt_line()\n{\n    _arguments -C -s -S \\\n" + before +
           "        '1: :_pelt_commands' \\\n        '*:: :_pelt_rest'\n}\n" + functions;
}

} // namespace pelt::cli
