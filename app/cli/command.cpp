// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/command.h"

#include "app/cli/arguments.h"
#include "core/input_error.h"
#include "core/store/book_error.h"

#include <exception>
#include <ostream>
#include <variant>

namespace evenfall::cli {

int run_command_line(int argc, const char* const* argv, Streams& streams) {
    try {
        auto parsed = parse_arguments(argc, argv);
        if (const Stop* stop = std::get_if<Stop>(&parsed)) {
            (stop->status == 0 ? streams.out : streams.err) << stop->text;
            return stop->status;
        }
        const int status = std::visit([&](const auto& options) { return run(options, streams); },
                                      std::get<Invocation>(parsed));
        streams.out.flush();
        if (!streams.out) throw std::runtime_error("standard output could not be written");
        return status;
    } catch (const ArgumentError& e) {
        streams.err << "evenfall: " << e.what() << '\n';
        return bad_arguments;
    } catch (const InputError& e) {
        streams.err << "evenfall: " << e.what() << '\n';
        return bad_input;
    } catch (const store::BookError& e) {
        streams.err << "evenfall: " << e.what() << '\n';
        return bad_book;
    } catch (const std::exception& e) {
        // Disk full, no memory, a file that vanished: nothing the input could have said better.
        streams.err << "evenfall: " << e.what() << '\n';
        return bad_book;
    }
}

}  // namespace evenfall::cli
