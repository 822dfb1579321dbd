// SPDX-License-Identifier: GPL-3.0-or-later
// The environment of GLPK belongs to a thread, so programs in two threads do not meet.
#include "core/planning/linear_program.hpp"

#include <algorithm>
#include <glpk.h>

namespace quarterstep
{

struct LinearProgram::Inside {
    glp_prob* problem = nullptr;
    std::size_t wholeColumns = 0;
};

namespace
{

int indexOf(std::size_t place)
{
    return static_cast<int>(place) + 1; // GLPK counts from 1
}

/// Programs of this thread: with the last one the thread's environment goes.
thread_local int livingPrograms = 0;

/// Ends the branching after a number of nodes.
struct NodeLimit {
    int left = 0;
    bool reached = false;
};

void countNodes(glp_tree* tree, void* info)
{
    auto* limit = static_cast<NodeLimit*>(info);
    if (glp_ios_reason(tree) != GLP_ISELECT || limit->left-- > 0)
        return;
    limit->reached = true;
    glp_ios_terminate(tree);
}

} // namespace

LinearProgram::LinearProgram() : inside_(std::make_unique<Inside>())
{
    ++livingPrograms;
    glp_term_out(GLP_OFF);
    inside_->problem = glp_create_prob();
    glp_set_obj_dir(inside_->problem, GLP_MAX);
}

LinearProgram::LinearProgram(LinearProgram&&) noexcept = default;

LinearProgram::~LinearProgram()
{
    if (!inside_ || inside_->problem == nullptr)
        return;
    glp_delete_prob(inside_->problem);
    if (--livingPrograms == 0)
        glp_free_env();
}

std::size_t LinearProgram::addRow(double most, const std::vector<ColumnEntry>& entries)
{
    auto* problem = inside_->problem;
    const int row = glp_add_rows(problem, 1);
    glp_set_row_bnds(problem, row, GLP_UP, 0.0, most);
    std::vector<int> places{0};
    std::vector<double> factors{0.0};
    for (const auto& entry : entries) {
        places.push_back(indexOf(entry.column));
        factors.push_back(entry.factor);
    }
    glp_set_mat_row(problem, row, static_cast<int>(entries.size()), places.data(), factors.data());
    return static_cast<std::size_t>(row) - 1;
}

std::size_t LinearProgram::addColumn(double gain, std::optional<double> most,
                                     const std::vector<RowEntry>& entries, bool whole)
{
    auto* problem = inside_->problem;
    const int column = glp_add_cols(problem, 1);
    glp_set_obj_coef(problem, column, gain);
    if (most)
        glp_set_col_bnds(problem, column, *most > 0.0 ? GLP_DB : GLP_FX, 0.0, *most);
    else
        glp_set_col_bnds(problem, column, GLP_LO, 0.0, 0.0);
    if (whole) {
        glp_set_col_kind(problem, column, GLP_IV);
        ++inside_->wholeColumns;
    }
    std::vector<int> places{0};
    std::vector<double> factors{0.0};
    for (const auto& entry : entries) {
        places.push_back(indexOf(entry.row));
        factors.push_back(entry.factor);
    }
    glp_set_mat_col(problem, column, static_cast<int>(entries.size()), places.data(), factors.data());
    return static_cast<std::size_t>(column) - 1;
}

void LinearProgram::setMost(std::size_t row, double most)
{
    glp_set_row_bnds(inside_->problem, indexOf(row), GLP_UP, 0.0, most);
}

void LinearProgram::beginAt(const std::vector<std::size_t>& columns, const std::vector<std::size_t>& rows)
{
    glp_std_basis(inside_->problem);
    for (const auto column : columns)
        glp_set_col_stat(inside_->problem, indexOf(column), GLP_BS);
    for (const auto row : rows)
        glp_set_row_stat(inside_->problem, indexOf(row), GLP_NU);
}

bool LinearProgram::solve()
{
    glp_smcp settings;
    glp_init_smcp(&settings);
    settings.msg_lev = GLP_MSG_OFF;
    settings.meth = GLP_PRIMAL;
    auto* problem = inside_->problem;
    int failed = glp_simplex(problem, &settings);
    if (failed == GLP_EBADB || failed == GLP_ESING || failed == GLP_ECOND) {
        glp_std_basis(problem);
        failed = glp_simplex(problem, &settings);
    }
    return failed == 0 && glp_get_status(problem) == GLP_OPT;
}

double LinearProgram::best() const
{
    return glp_get_obj_val(inside_->problem);
}

double LinearProgram::value(std::size_t column) const
{
    return glp_get_col_prim(inside_->problem, indexOf(column));
}

double LinearProgram::price(std::size_t row) const
{
    return glp_get_row_dual(inside_->problem, indexOf(row));
}

std::size_t LinearProgram::columns() const
{
    return static_cast<std::size_t>(glp_get_num_cols(inside_->problem));
}

std::optional<LinearProgram::Whole> LinearProgram::solveWhole(int nodes)
{
    NodeLimit limit{nodes, false};
    glp_iocp settings;
    glp_init_iocp(&settings);
    settings.msg_lev = GLP_MSG_OFF;
    settings.gmi_cuts = GLP_ON;
    settings.cb_func = countNodes;
    settings.cb_info = &limit;
    auto* problem = inside_->problem;
    const int failed = glp_intopt(problem, &settings);
    const int status = glp_mip_status(problem);
    if ((failed != 0 && failed != GLP_ESTOP) || (status != GLP_OPT && status != GLP_FEAS))
        return std::nullopt;
    Whole whole;
    whole.best = glp_mip_obj_val(problem);
    whole.proved = status == GLP_OPT && !limit.reached;
    for (std::size_t i = 0; i < columns(); ++i)
        whole.values.push_back(glp_mip_col_val(problem, indexOf(i)));
    return whole;
}

} // namespace quarterstep
