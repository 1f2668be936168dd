// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/options.h"

#include <iosfwd>
#include <stdexcept>

/// The commands. Each writes its answer to `out` and progress or remarks to `err`, returns the
/// exit status, and throws ArgumentError, InputError or store::BookError for what it cannot use.
namespace evenfall::cli {

enum Status : int { done = 0, answer_no = 1, bad_arguments = 2, bad_input = 3, bad_book = 4 };

/// Arguments that do not go together, found only by the command itself. Status 2.
class ArgumentError : public std::runtime_error {
  public:
    using std::runtime_error::runtime_error;
};

struct Streams {
    std::ostream& out;
    std::ostream& err;
    bool err_is_terminal = false;  ///< progress is shown only on a terminal
    std::string program_folder;    ///< where this program stands; its siblings stand there too
};

int run(const DemoOptions&, Streams&);
int run(const NewOptions&, Streams&);
int run(const ImportOptions&, Streams&);
int run(const UniformityOptions&, Streams&);
int run(const ReferenceEtOptions&, Streams&);
int run(const EffectiveRainOptions&, Streams&);
int run(const OverlapOptions&, Streams&);
int run(const LayoutOptions&, Streams&);
int run(const SeasonOptions&, Streams&);
int run(const PortfolioOptions&, Streams&);
int run(const ScheduleOptions&, Streams&);
int run(const ReportOptions&, Streams&);
int run(const CheckOptions&, Streams&);
int run(const ExportOptions&, Streams&);
int run(const FileOptions&, Streams&);
int run(const ReviewOptions&, Streams&);
int run(const ApplicationOptions&, Streams&);

/// Parses, runs and turns every error into a message and an exit status. What tests call.
int run_command_line(int argc, const char* const* argv, Streams& streams);

}  // namespace evenfall::cli
