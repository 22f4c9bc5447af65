// SPDX-License-Identifier: MIT
#include "cli/cli.hpp"

#include "cli/colour.hpp"
#include "cli/context.hpp"
#include "cli/help.hpp"
#include "cli/log.hpp"
#include "cli/statuses.hpp"
#include "cli/values.hpp"
#include "model/error.hpp"

#include <csignal>
#include <cstdio>
#include <cstdlib>
#include <exception>
#include <new>

namespace pelt::cli {
namespace {

Loudness loudness_of(const Arguments& arguments) {
    return {arguments.count(Opt::quiet) > 0, static_cast<int>(arguments.count(Opt::verbose))};
}

int dispatch(const Context& context) {
    switch (*context.arguments.command) {
    case Command::cut:
        return run_cut(context);
    case Command::area:
        return run_area(context);
    case Command::compare:
        return run_compare(context);
    case Command::check:
        return run_check(context);
    case Command::list:
        return run_list(context);
    case Command::strip:
        return run_strip(context);
    case Command::quote:
        return run_quote(context);
    }
    throw ProgramError("a command works by the table, but nothing does it");
}

int run_words(const std::vector<std::string>& args) {
    const World world = real_world();
    Faults faults;
    const Arguments arguments = parse(args, faults);
    const Messages messages(
        to_standard_error, loudness_of(arguments),
        wants_colour(arguments.value_or_initial(Opt::color), world, world.errors_are_terminal),
        unit_named(arguments.value_or_initial(Opt::units)).value_or(Unit::mm));
    if (arguments.count(Opt::help) > 0)
        return print(arguments.command ? help_of_command(*arguments.command) : main_help(),
                     messages);
    if (arguments.count(Opt::version) > 0)
        return print(version_text(), messages);
    messages.tell(faults);
    if (!faults.empty())
        return status::wrong_command_line;
    if (!arguments.command) {
        to_standard_error(short_help());
        return status::wrong_command_line;
    }
    start_log(messages.loudness().verbose);
    return dispatch({arguments, world, messages});
}

void tell_out_of_memory() {
    std::fprintf(stderr,
                 "pelt: memory ran out; nothing was printed\n"
                 "pelt: if this machine has some to spare, please report it with your files, the "
                 "command and the version, pelt %s\n",
                 PELT_VERSION);
}

int tell_failure(const char* what) {
    std::fprintf(stderr,
                 "pelt: %s\n"
                 "pelt: this is a fault of pelt %s, not of your files; nothing was printed; please "
                 "report it with your files and the command\n",
                 what, PELT_VERSION);
    return status::failed;
}

/// Libraries ask for memory in functions that let nothing be thrown out of them.
[[noreturn]] void end_of_a_throw() {
    try {
        if (const auto thrown = std::current_exception())
            std::rethrow_exception(thrown);
    } catch (const std::bad_alloc&) {
        tell_out_of_memory();
        std::_Exit(status::failed);
    } catch (...) { // a bug, which a core dump tells more about
    }
    std::abort();
}

} // namespace

int run(int argc, char** argv) {
    // A parent may have had it ignored; a closed pipe is to end us without a word.
    std::signal(SIGPIPE, SIG_DFL);
    // A limit on the size of files is an error like a full disk.
    std::signal(SIGXFSZ, SIG_IGN);
    std::set_terminate(end_of_a_throw);
    try {
        return run_words({argv + (argc > 0 ? 1 : 0), argv + argc});
    } catch (const ProgramError& error) {
        return tell_failure(error.what());
    } catch (const std::bad_alloc&) {
        tell_out_of_memory();
        return status::failed;
    } catch (const std::exception& error) {
        log_exception(error);
        return tell_failure("something went wrong that should not (-vv says what)");
    }
}

} // namespace pelt::cli
