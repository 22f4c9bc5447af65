// SPDX-License-Identifier: MIT
#include "cli/completed.hpp"
#include "cli/completion.hpp"

namespace pelt::cli {
namespace {

/// One row of a `case`: PATTERN|PATTERN) echo WORDS ;;
std::string branch(const std::string& patterns, const std::string& words) {
    return "    " + patterns + ") echo " + quoted_for_shell(words) + " ;;\n";
}

std::string function(const std::string& comment, const std::string& name, const std::string& key,
                     const std::string& branches) {
    return "# " + comment + "\n" + name + "()\n{\n    case " + key + " in\n" + branches +
           "    esac\n}\n";
}

std::string joined(const std::vector<std::string>& words) {
    std::string out;
    for (const std::string& word : words)
        out += (out.empty() ? "" : " ") + word;
    return out;
}

/// "choice a b", "names panel group", "file", "text".
std::string value_of(const OptionRow& row) {
    std::string out;
    if (row.kind == Kind::choice) {
        out = "choice";
        for (const Choice& choice : row.choices)
            if (choice.works)
                out += " " + std::string(choice.word);
    } else if (!row.named.empty()) {
        out = "names";
        for (const std::string_view name : row.named)
            out += " " + std::string(name);
    } else {
        out = row.kind == Kind::file ? "file" : "text";
    }
    return out;
}

std::string options_in(const std::vector<OptionRow>& rows) {
    std::vector<std::string> words;
    for (const OptionRow& row : rows)
        for (const std::string& spelling : spellings_of(row))
            words.push_back(spelling);
    return joined(words);
}

std::string values_in(const std::vector<OptionRow>& rows, const std::string& command) {
    std::string out;
    for (const OptionRow& row : rows) {
        if (row.kind == Kind::flag)
            continue;
        std::string patterns;
        for (const std::string& spelling : spellings_of(row))
            patterns += (patterns.empty() ? "" : " | ") +
                        quoted_for_shell(std::string(command) + " " + spelling);
        out += branch(patterns, value_of(row));
    }
    return out;
}

std::string words_of(const std::vector<Operand>& operands) {
    std::string out;
    for (const Operand operand : operands)
        out += (out.empty() ? "" : " ") + std::string(name_of(operand));
    return out;
}

} // namespace

std::string tables_for_bash() {
    std::string names;
    std::string options = branch("''", options_in(options_before_commands()));
    std::string values = values_in(options_before_commands(), "");
    std::string operands;
    for (const CommandRow& row : commands()) {
        if (!row.works)
            continue;
        const std::string name(row.name);
        names += (names.empty() ? "" : " ") + name;
        options += branch(name, options_in(options_for(row.id)));
        values += values_in(options_for(row.id), name);
        operands += branch(quoted_for_shell(name + " 1"), words_of(operands_of(row).first));
        operands += branch(quoted_for_shell(name + " ") + "*", words_of(operands_of(row).later));
    }
    return function("The commands.", "_pelt_commands", "x", branch("*", names)) + "\n" +
           function("The options of a command; of none: those that may stand before it.",
                    "_pelt_options", "$1", options) +
           "\n" +
           function("What the value of an option is: COMMAND OPTION. Nothing: it takes none.",
                    "_pelt_value", "\"$1 $2\"", values) +
           "\n" +
           function("What an operand is: COMMAND NUMBER.", "_pelt_operand", "\"$1 $2\"", operands);
}

} // namespace pelt::cli
