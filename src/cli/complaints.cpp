// SPDX-License-Identifier: MIT
#include "cli/complaints.hpp"

#include "cli/nearest.hpp"
#include "cli/values.hpp"

#include <algorithm>
#include <utility>

namespace pelt::cli {
namespace {

using Words = std::vector<std::string>;

std::string help_of(Command command) {
    return "'pelt " + std::string(row_of(command).name) + " --help'";
}

std::string joined(const std::string& hint, const std::string& remedy) {
    return hint.empty() ? remedy : hint + " " + remedy;
}

/// The option's name as it was typed, without dashes and value.
std::string bare(const std::string& word) {
    const std::size_t start = word.find_first_not_of('-');
    return start == std::string::npos ? "" : word.substr(start, word.find('=') - start);
}

/// The word without its value: values can be long, and are not what is wrong.
std::string without_value(const std::string& word) {
    return word.substr(0, word.find('='));
}

Words option_names(Command command) {
    Words names;
    for (const OptionRow& row : options())
        if (row.works && belongs_to(row, command))
            names.emplace_back(row.name);
    return names;
}

Words command_names() {
    Words names;
    for (const CommandRow& row : commands())
        if (row.works)
            names.emplace_back(row.name);
    return names;
}

const OptionRow* row_spelled(const std::string& word) {
    if (word.size() > 2 && word.compare(0, 2, "--") == 0)
        return option_named(word.substr(2, word.find('=') - 2));
    return word.size() == 2 && word[0] == '-' ? option_lettered(word[1]) : nullptr;
}

Fault without_a_value(const std::string& as_typed, const OptionRow& row) {
    return usage(as_typed + " has no value", "write '" + spelled_with_value(row) + "'");
}

Fault value_for_flag(const OptionRow& row) {
    return usage(spelled(row) + " takes no value", "write '" + spelled(row) + "' alone");
}

/// Walks along the words as CLI11 will.
class Speller {
public:
    Speller(const Words& args, Faults& faults) : args_(args), faults_(faults) {}

    void check() {
        for (; at_ < args_.size() && args_[at_] != "--"; ++at_) {
            const std::string& word = args_[at_];
            if (word.size() < 2 || word[0] != '-')
                continue;
            if (word.compare(0, 2, "--") == 0)
                long_word(word);
            else
                letters(word);
        }
    }

private:
    void long_word(const std::string& word) {
        if (word[2] == '-' || word[2] == '!' || word[2] == ' ' || word[2] == '\n') {
            no_option(word);
            return;
        }
        const OptionRow* row = row_spelled(word);
        const std::size_t equals = word.find('=');
        if (row == nullptr)
            return;
        if (equals == std::string::npos && row->kind != Kind::flag)
            take_next(spelled(*row), *row);
        else if (equals != std::string::npos && row->kind == Kind::flag)
            faults_.push_back(value_for_flag(*row));
        else if (equals + 1 == word.size())
            faults_.push_back(without_a_value(spelled(*row), *row));
    }

    void letters(const std::string& word) {
        if (word[1] == '!' || word[1] == ' ' || word[1] == '\n') {
            no_option(word);
            return;
        }
        for (std::size_t i = 1; i < word.size(); ++i) {
            const OptionRow* row = option_lettered(word[i]);
            if (row == nullptr)
                return;
            if (row->kind != Kind::flag) {
                value_of_letter(word, i, *row);
                return;
            }
            if (i + 1 < word.size() && word[i + 1] == '=') {
                faults_.push_back(value_for_flag(*row));
                return;
            }
        }
    }

    void value_of_letter(const std::string& word, std::size_t i, const OptionRow& row) {
        const std::string letter{'-', row.letter};
        if (i + 1 == word.size())
            take_next(letter, row);
        else if (word[i + 1] == '=')
            faults_.push_back(usage(letter + " has an equals sign before its value",
                                    "write '" + letter + " " + std::string(row.value) + "' or '" +
                                        spelled(row) + "=" + std::string(row.value) + "'"));
    }

    /// A value that is spelled like an option is an option whose value was forgotten before it;
    /// who means it writes `--only=--times`.
    void take_next(const std::string& as_typed, const OptionRow& row) {
        if (at_ + 1 == args_.size() || args_[at_ + 1] == "--" ||
            row_spelled(args_[at_ + 1]) != nullptr)
            faults_.push_back(without_a_value(as_typed, row));
        else
            ++at_;
    }

    void no_option(const std::string& word) {
        faults_.push_back(usage("unknown option " + in_quotes(word),
                                "a file of that name is written './" + word.substr(0, 20) + "'"));
    }

    const Words& args_;
    Faults& faults_;
    std::size_t at_ = 0;
};

} // namespace

Fault usage(std::string what, std::string remedy) {
    return {Severity::usage, {}, "", std::move(what), std::move(remedy)};
}

Fault unknown_command(const std::string& word) {
    const CommandRow* row = command_named(word);
    if (row != nullptr)
        return usage("the command " + in_quotes(word) + " is not known yet",
                     "'pelt --help' lists those that are");
    return usage(
        "unknown command " + in_quotes(word),
        joined(did_you_mean(nearest(word, command_names())), "'pelt --help' lists the commands"));
}

Fault unknown_option(const std::string& word, Command command) {
    return usage("unknown option " + in_quotes(without_value(word)),
                 joined(did_you_mean(nearest(bare(word), option_names(command)), "--"),
                        help_of(command) + " lists the options"));
}

Fault option_before_command(const std::string& word) {
    const OptionRow* row = row_spelled(word);
    if (row == nullptr || !row->works || row->commands.empty())
        return usage("unknown option " + in_quotes(without_value(word)), "see 'pelt --help'");
    return usage(in_quotes(without_value(word)) + " stands before the command",
                 "write the command first: 'pelt " +
                     std::string(row_of(row->commands.front()).name) + " " +
                     spelled_with_value(*row) + " ...'");
}

Fault not_known_yet(const OptionRow& option, Command command) {
    return usage("the option '" + spelled(option) + "' is not known yet",
                 help_of(command) + " lists those that are");
}

Fault of_other_command(const OptionRow& option, Command command) {
    Words owners;
    for (const Command owner : option.commands)
        if (row_of(owner).works)
            owners.emplace_back(row_of(owner).name);
    std::string of;
    for (const std::string& owner : owners)
        of += (of.empty() ? "" : ", ") + owner;
    return usage("'pelt " + std::string(row_of(command).name) + "' takes no '" + spelled(option) +
                     "'",
                 "it is an option of " + of);
}

void check_spelling(const std::vector<std::string>& args, Faults& faults) {
    Speller(args, faults).check();
}

void check_operands(const std::vector<std::string>& operands, Command command, Faults& faults) {
    const CommandRow& row = row_of(command);
    const std::string usage_line =
        "write 'pelt " + std::string(row.name) + " " + std::string(row.operands) + "'";
    const auto given = static_cast<int>(std::min<std::size_t>(operands.size(), 1'000'000));
    if (given < row.least_operands)
        faults.push_back(usage("'pelt " + std::string(row.name) + "' needs " +
                                   (row.least_operands == 1 ? "a file" : "two files at least") +
                                   (given == 0 ? ", and none is given" : ", and one is given"),
                               usage_line));
    if (row.most_operands && given > *row.most_operands)
        faults.push_back(
            usage("'pelt " + std::string(row.name) + "' takes no " +
                      in_quotes(operands[static_cast<std::size_t>(*row.most_operands)]),
                  usage_line));
    for (const std::string& operand : operands)
        if (operand.empty())
            faults.push_back(usage("a file name is empty", usage_line));
    if (std::count(operands.begin(), operands.end(), "-") > 1)
        faults.push_back(usage("standard input ('-') is asked for more than once",
                               "give all files but one by their name"));
}

} // namespace pelt::cli
