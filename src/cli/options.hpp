// SPDX-License-Identifier: MIT
// The table of options. Parsing, help and the manual are made from it; nothing about an option is
// written down anywhere else.
#pragma once

#include "cli/commands.hpp"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace pelt::cli {

enum class Opt {
    by,
    only,
    without,
    with,
    leave,
    like_size,
    times,
    width,
    margin,
    seams,
    split,
    turns,
    stages,
    table,
    in_order,
    stock,
    on_hand,
    flaw,
    done,
    spoiled,
    sure,
    tolerance,
    shop,
    who,
    start,
    inside,
    effort,
    time,
    threads,
    seed,
    units,
    format,
    summary,
    out,
    pattern,
    paper,
    form,
    names,
    csv,
    date,
    fill,
    schema,
    help,
    version,
    quiet,
    verbose,
    color,
};

/// What an option's value is.
enum class Kind {
    flag,    ///< no value
    choice,  ///< one of a few words
    names,   ///< names between commas
    count,   ///< a whole number within bounds
    seconds, ///< a decimal number
    percent, ///< a decimal number and its sign
    length,  ///< a number and its unit
    span,    ///< two lengths: FROM..TO
    sizes,   ///< three lengths between commas
    margin,  ///< one length, or two with a comma between them
    file,    ///< a path, or `-`
    date,
    filling, ///< WORD=TEXT
};

enum class Group { job, film, search, output, everywhere };
std::string_view name_of(Group group);
/// In the order in which help shows them.
const std::vector<Group>& groups();

struct Choice {
    std::string_view word;
    bool works = true;
    std::vector<Command> commands = {}; ///< empty: all that the option belongs to
};

struct OptionRow {
    Opt id;
    std::string_view name; ///< without its dashes
    char letter = 0;       ///< 0: none
    Kind kind = Kind::flag;
    std::string_view value = {}; ///< what help calls the value; empty: its choices
    std::vector<Choice> choices = {};
    std::string_view initial = {}; ///< what holds without the option; empty: nothing to say
    std::int64_t least = 0;        ///< of a count; of a length, in millimetres
    std::int64_t most = 0;
    std::vector<Command> commands = {}; ///< empty: all
    Group group = Group::job;
    std::string_view line; ///< one line, for help
    std::string_view text; ///< whole sentences, for the manual
    bool works = true;     ///< false: refused as not known yet, and left out of help and manual
    bool repeats = false;  ///< may be given more than once
    std::vector<Command> repeats_with = {}; ///< commands with which it may, where others may not
    /// What of a vehicle its names may be, as `pelt list NAME --names` calls them.
    std::vector<std::string_view> named = {};
};

/// Every option that is or will be, in the order in which help lists them.
const std::vector<OptionRow>& options();

const OptionRow& row_of(Opt option);
const OptionRow* option_named(std::string_view name);
const OptionRow* option_lettered(char letter);
bool belongs_to(const OptionRow& option, Command command);
bool may_repeat(const OptionRow& option, Command command);
/// The option with the choices that it has for this command.
OptionRow as_of(const OptionRow& option, Command command);

/// How the option is written: "--out"; "--out FILE" with its value.
std::string spelled(const OptionRow& option);
std::string spelled_with_value(const OptionRow& option);
/// The words of a choice that work, with `|` between them.
std::string choices_of(const OptionRow& option);

} // namespace pelt::cli
